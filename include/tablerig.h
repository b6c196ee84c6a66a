/*
 * tablerig.h - where the camera must be for a tabletop picture, and whether what holds it will stand
 *
 * Generated from src/doors/c; not to be edited. MIT license.
 *
 *
 * WHAT RULES
 *
 * A camera on an arm over a table can hurt someone. Everything here is a computed figure for a rigid rig on
 * a floor as level as the brief says. The makers' ratings of stand, boom, clamp and head rule over it; local
 * codes apply; a qualified rigger decides. Show a plan's cautions before its numbers, and where its `overhead`
 * is 1 all sentences of tablerig_overhead_caution beside them.
 *
 *
 * CONVENTIONS, for every function
 *
 * Calls. A function returns a status, an int32_t: 0 is TABLERIG_STATUS_OK; 1 to 99 say that it was called
 *   wrongly (pointers, sizes, codes), 101 to 199 that one value is out of its range, 201 to 299 that values
 *   contradict each other, 301 to 399 that the geometry has no answer, 901 and above that something inside
 *   went wrong. Inputs come first, then the output, then `fault`, a record of what was refused: it may be
 *   null, and is written only where something was. An output is written last of all, and only when the
 *   status is 0; until then it is as it was. Functions that only look up a text or a version return it.
 *
 * Memory. All of it is the caller's. Nothing is allocated, so nothing is freed; no pointer is kept after a
 *   call returns. Strings that come out are static and in English.
 *
 * Threads. There is no state, hidden or global: any function may be called from any threads at once, as long
 *   as no thread writes what another one's call reads or writes.
 *
 * Pointers. Null is refused where this header does not allow it, and so is a pointer that is not aligned for
 *   its type, and an output that overlaps an input or another output. Behind any other pointer there must
 *   be as much memory as its type or its `size` says.
 *
 * Units. Millimetres (_mm), degrees (_deg), kilograms (_kg), newtons (_n), newton metres (_n_m), hertz (_hz),
 *   seconds (_s); a name without a unit is a pure number, and a share is 0 to 1. g = 9.80665 m/s2.
 *
 * Axes. The origin is on the floor under the centre of the table: x to the right as seen from the table's
 *   front edge, y away from the front edge, z up. Elevation: 0 straight-on, 90 straight overhead. Bearing,
 *   seen from above and counter-clockwise: 0 in front, 90 to the right, 180 behind, 270 to the left.
 *
 * Numbers. What comes in must be finite, and within the range that its field names; ranges include their
 *   ends. Where none is named, as in another call's result, it is -1e30 to 1e30. What goes out is a number,
 *   never NaN, and finite unless its comment says that it may be infinite (an IEEE infinity). The same input
 *   gives the same bits on every processor.
 *
 * What may be left out. `has_x`, an int32_t, says whether `x` counts: 1 yes, 0 no. In a result, what is not
 *   there is 0. Flags are int32_t too, 0 or 1. Enumerations are stored and passed as int32_t; any other
 *   number than theirs is refused.
 *
 * Structs that grow begin with `uint32_t size`. Later versions may add fields at their ends, so size is what
 *   your compiler says: call tablerig_x_init (&x, sizeof x), which sets it and fills in every default, then
 *   set the rest. A field that has no default becomes TABLERIG_UNSET (a count 0), which is refused by name,
 *   so forgetting it is an error. A struct shorter than the library's gets defaults for what it lacks (it must
 *   reach the last field without a default, and end after a whole field, at a multiple of 8); of one that is
 *   longer, what the library does not know must be 0. A result is written no further than its size says.
 *   Structs without a size never change. No struct has hidden padding, except at the end of TablerigFault
 *   and TablerigRange where pointers have 4 bytes; fields called reserved are 0.
 *
 * Promise. As long as TABLERIG_ABI stays, a program compiled with any version's header works with any
 *   later library, and with an earlier one as long as it uses nothing new. Functions, fields, statuses and
 *   codes are added, never changed or taken away, and no number is used again. Results may change in
 *   their last digits with a version, and where a defect is mended; never between processors.
 *
 *
 * AN EXAMPLE (tests/hosts/c/first.c: cc first.c $(pkg-config --cflags --libs tablerig))
 *
 *     #include <stdio.h>
 *     #include <tablerig.h>
 *
 *     int main(void)
 *     {
 *         TablerigShot shot;
 *         TablerigCamera camera;
 *         TablerigLens lens;
 *         TablerigTable table;
 *         TablerigSubject subject;
 *         TablerigSupport support;
 *         TablerigBrief brief;
 *         TablerigPlan plan;
 *         TablerigFault fault;
 *
 *         // A jar of plum preserve from 20 degrees above, to fill two thirds of the frame's height.
 *         tablerig_shot_init(&shot, sizeof shot);
 *         shot.elevation_deg = 20;
 *         shot.framing = TABLERIG_FRAMING_FILL_HEIGHT;
 *         shot.fill_height = 0.667;
 *
 *         tablerig_camera_init(&camera, sizeof camera);
 *         camera.sensor_width_mm = 36;
 *         camera.sensor_height_mm = 24;
 *         camera.socket_ahead_mm = 30;
 *         camera.socket_below_mm = 45;
 *         camera.body_above_mm = 60;
 *         camera.mass_kg = 0.7;
 *
 *         tablerig_lens_init(&lens, sizeof lens);
 *         lens.focal_length_mm = 90;
 *         lens.least_f_number = 2.8;
 *         lens.most_f_number = 22;
 *         lens.mass_kg = 0.6;
 *         lens.centre_ahead_mm = 70;
 *         lens.has_closest_focus_mm = 1;
 *         lens.closest_focus_mm = 450;
 *
 *         tablerig_table_init(&table, sizeof table);
 *         table.width_mm = 1200;
 *         table.depth_mm = 700;
 *         table.height_mm = 740;
 *
 *         tablerig_subject_init(&subject, sizeof subject);
 *         subject.shape = TABLERIG_SHAPE_ROUND;
 *         subject.diameter_mm = 80;
 *         subject.height_mm = 120;
 *
 *         tablerig_support_init(&support, sizeof support);
 *         support.leg_count = 3;
 *         support.lowest_pivot_mm = 300;
 *         support.highest_pivot_mm = 1700;
 *         support.column_radius_mm = 15;
 *         support.foot_radius_mm = 450;
 *         support.legs_top_mm = 1100;
 *         support.mass_kg = 2.5;
 *         support.centre_height_mm = 700;
 *         support.head.mass_kg = 0.5;
 *         support.head.pivot_below_socket_mm = 90;
 *
 *         tablerig_brief_init(&brief, sizeof brief);
 *         brief.shot = &shot;
 *         brief.camera = &camera;
 *         brief.lens = &lens;
 *         brief.table = &table;
 *         brief.subject = &subject;
 *         brief.support = &support;
 *
 *         tablerig_plan_init(&plan, sizeof plan);
 *         if (tablerig_plan(&brief, &plan, &fault) != TABLERIG_STATUS_OK) {
 *             fprintf(stderr, "%s = %g %s (allowed: %g to %g)\n", fault.field, fault.value,
 *                     tablerig_status_text(fault.status), fault.least, fault.most);
 *             return 1;
 *         }
 *
 *         for (uint32_t i = 0; i < plan.caution_count; i++) {
 *             const TablerigCaution *caution = &plan.cautions[i];
 *             printf("%s: %s (%g, limit %g %s)\n", tablerig_level_text(caution->level),
 *                    tablerig_caution_text(caution->code), caution->value, caution->limit,
 *                    tablerig_caution_unit(caution->code));
 *         }
 *         printf("Lens axis at the sensor %.0f mm above the floor, %.0f mm from the aim point, f/%g.\n",
 *                plan.pose.sensor.z_mm, plan.lens.sensor_distance_mm, plan.focus.engraved);
 *         printf("%s\n", tablerig_removal_text(plan.removal));
 *         for (uint32_t i = 0; plan.overhead && tablerig_overhead_caution(i) != NULL; i++)
 *             printf("- %s\n", tablerig_overhead_caution(i));
 *         return 0;
 *     }
 *
 *
 * Many shots at once: tablerig_plan_batch. Fields for a form, with their ranges: tablerig_range_at.
 *
 * CONTENTS: constants; types: statuses and enumerations, points, optics, what stands in the room, view, rig,
 * advice, tolerance, cautions, brief and plan; functions in the same order.
 */

#ifndef TABLERIG_H
#define TABLERIG_H

#include <stddef.h>
#include <stdint.h>

/** Major version of this header. */
#define TABLERIG_VERSION_MAJOR 0

/** Minor version of this header. */
#define TABLERIG_VERSION_MINOR 1

/** Patch version of this header. */
#define TABLERIG_VERSION_PATCH 0

/** Version of this header as one number that grows: major x 1000000 + minor x 1000 + patch. */
#define TABLERIG_VERSION 1000

/**
 * Version of the binary interface: that of the shared library's name. It changes only when a program
 * compiled earlier would no longer work.
 */
#define TABLERIG_ABI 1

/** Most feet that a support may have. */
#define TABLERIG_MOST_LEGS 8

/** Most sandbags that can be told apart on one support. */
#define TABLERIG_MOST_SANDBAGS 4

/** Weights on a rig besides payload, boom and counterweight: column and legs, base, sandbags. */
#define TABLERIG_RESTING_WEIGHTS 6

/** Most cautions that a plan has room for; each code comes once at most. */
#define TABLERIG_MOST_CAUTIONS 64

/**
 * What an initialiser writes into a number that has no default: outside every range, so that a number
 * forgotten is refused by name.
 */
#define TABLERIG_UNSET -1000000.0

/**
 * What every function returns, as an int32_t. The numbers come in families and are never used again for
 * something else: 0 done; 1 to 99 how the function was called; 101 to 199 one value is out of its range;
 * 201 to 299 values contradict each other; 301 to 399 the geometry has no answer; from 901 internal.
 * Later versions may add numbers to each family.
 */
enum TablerigStatus
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
    /** Done; the outputs are written. */
    TABLERIG_STATUS_OK = 0,
    /** A pointer is null that must not be. */
    TABLERIG_STATUS_NULL_POINTER = 1,
    /** A pointer is not aligned for its type. */
    TABLERIG_STATUS_MISALIGNED = 2,
    /**
     * A size, a stride or a count that cannot be: a struct's size that was never set or that is not a
     * multiple of 8, a stride shorter than its elements, more bytes than memory has.
     */
    TABLERIG_STATUS_WRONG_SIZE = 3,
    /**
     * A field is set that this version of the library does not know: a reserved one, or one in the tail of
     * a later version's longer struct.
     */
    TABLERIG_STATUS_UNKNOWN_FIELD = 4,
    /** An output overlaps an input or another output. */
    TABLERIG_STATUS_OVERLAPPING = 5,
    /**
     * An int32_t is none of its enumeration's numbers, a flag is neither 0 nor 1, or an index is past the
     * end.
     */
    TABLERIG_STATUS_UNKNOWN_CODE = 6,
    /** The value is not a number, or infinite. */
    TABLERIG_STATUS_NOT_FINITE = 101,
    /** The value is under the least that the field may have. */
    TABLERIG_STATUS_TOO_SMALL = 102,
    /** The value is over the most that the field may have. */
    TABLERIG_STATUS_TOO_LARGE = 103,
    /** Closest focus and largest magnification give the lens no focal length there. */
    TABLERIG_STATUS_NO_FOCAL_LENGTH_AT_CLOSEST_FOCUS = 201,
    /** Closest focus and largest magnification make the focal length grow by more than a tenth. */
    TABLERIG_STATUS_FOCAL_LENGTH_GROWS = 202,
    /** By closest focus and largest magnification the lens would come nearer and then recede again. */
    TABLERIG_STATUS_FOCUS_TURNS_BACK = 203,
    /** The highest position of a support lies under its lowest. */
    TABLERIG_STATUS_HIGHEST_UNDER_LOWEST = 204,
    /** The contents of a vessel lie deeper than the vessel is high. */
    TABLERIG_STATUS_CONTENTS_UNDER_VESSEL = 205,
    /** The vessel is wider inside than outside. */
    TABLERIG_STATUS_VESSEL_WIDER_INSIDE = 206,
    /** The tube of a boom is wider inside than outside, or as wide. */
    TABLERIG_STATUS_TUBE_WIDER_INSIDE = 207,
    /** The feet stand inside the column's own radius. */
    TABLERIG_STATUS_FEET_INSIDE_COLUMN = 208,
    /** The lens's largest f-number is smaller than its smallest. */
    TABLERIG_STATUS_F_NUMBERS_REVERSED = 209,
    /** No frame width gives the share of the frame that was asked for. */
    TABLERIG_STATUS_NO_FRAME_WIDTH = 301,
    /** The lens cannot focus at that distance. */
    TABLERIG_STATUS_NO_FOCUS = 302,
    /** No focal length gives that distance and that frame width. */
    TABLERIG_STATUS_NO_FOCAL_LENGTH = 303,
    /** No frame width keeps the camera under that ceiling. */
    TABLERIG_STATUS_NO_ROOM_UNDER_CEILING = 304,
    /** The measured place is the aim point itself, or no viewing distance. */
    TABLERIG_STATUS_NO_VIEWPOINT = 305,
    /** The place, or part of the subject, lies at or behind the entrance pupil: it has no picture. */
    TABLERIG_STATUS_BEHIND_CAMERA = 391,
    /** The line of sight does not meet the plane. */
    TABLERIG_STATUS_NOT_MET = 392,
    /** The boom's stiffness is not known, so its sag is not either. */
    TABLERIG_STATUS_NO_STIFFNESS = 393,
    /** The subject reaches the lens: no focus stack holds it. */
    TABLERIG_STATUS_NO_STACK = 394,
    /**
     * A result would not be a number. Of results of this library handed back to it unchanged this never
     * comes; coordinates made up beyond any room can lead here.
     */
    TABLERIG_STATUS_INTERNAL = 901,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum TablerigStatus TablerigStatus;
#else
typedef int32_t TablerigStatus;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

/** How the camera is held. */
enum TablerigHold
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
    /** The sensor's longer side level. */
    TABLERIG_HOLD_ACROSS = 0,
    /** The sensor's longer side upright: width and height swap. */
    TABLERIG_HOLD_UPRIGHT = 1,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum TablerigHold TablerigHold;
#else
typedef int32_t TablerigHold;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

/** By what a shot says how much the frame takes in. */
enum TablerigFraming
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
    /** By `frame_width_mm`. */
    TABLERIG_FRAMING_FRAME_WIDTH = 0,
    /** By `fill_width`: the frame width is solved for. */
    TABLERIG_FRAMING_FILL_WIDTH = 1,
    /** By `fill_height`: the frame width is solved for. */
    TABLERIG_FRAMING_FILL_HEIGHT = 2,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum TablerigFraming TablerigFraming;
#else
typedef int32_t TablerigFraming;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

/** Which side of the frame a subject is to fill. */
enum TablerigFill
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
    /** The frame's width. */
    TABLERIG_FILL_WIDTH = 0,
    /** The frame's height. */
    TABLERIG_FILL_HEIGHT = 1,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum TablerigFill TablerigFill;
#else
typedef int32_t TablerigFill;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

/** What is under the table top. */
enum TablerigUnderside
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
    /** Feet of a stand pass under the top. */
    TABLERIG_UNDERSIDE_OPEN = 0,
    /** A plinth or a cabinet: feet stay outside. */
    TABLERIG_UNDERSIDE_CLOSED = 1,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum TablerigUnderside TablerigUnderside;
#else
typedef int32_t TablerigUnderside;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

/** One of the table's edges, and the side of it on which a stand can be. */
enum TablerigSide
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
    /** Towards -y. */
    TABLERIG_SIDE_FRONT = 0,
    /** Towards +x. */
    TABLERIG_SIDE_RIGHT = 1,
    /** Towards +y. */
    TABLERIG_SIDE_BACK = 2,
    /** Towards -x. */
    TABLERIG_SIDE_LEFT = 3,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum TablerigSide TablerigSide;
#else
typedef int32_t TablerigSide;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

/** The subject's outer shape. */
enum TablerigShape
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
    /** A box of `width_mm` and `depth_mm`, its sides along the table's. */
    TABLERIG_SHAPE_BOX = 0,
    /** An upright round of `diameter_mm`. */
    TABLERIG_SHAPE_ROUND = 1,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum TablerigShape TablerigShape;
#else
typedef int32_t TablerigShape;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

/** What the picture of the subject lives by; the advice on elevation asks for it. */
enum TablerigJudgedBy
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
    /** Its form: flat, tall or between. */
    TABLERIG_JUDGED_BY_FORM = 0,
    /** Detail on its top. */
    TABLERIG_JUDGED_BY_TOP_DETAIL = 1,
    /** Layers in its side. */
    TABLERIG_JUDGED_BY_SIDE_LAYERS = 2,
    /** The contents of an opaque vessel. */
    TABLERIG_JUDGED_BY_CONTENTS = 3,
    /** Layers behind clear glass. */
    TABLERIG_JUDGED_BY_CLEAR_LAYERS = 4,
    /** The contents of a decorated glass whose shape should still read. */
    TABLERIG_JUDGED_BY_DECORATED_GLASS = 5,
    /** A whole laid table. */
    TABLERIG_JUDGED_BY_LAID_TABLE = 6,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum TablerigJudgedBy TablerigJudgedBy;
#else
typedef int32_t TablerigJudgedBy;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

/** How the stiffness of a boom is given. */
enum TablerigStiffnessKind
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
    /** Not at all: no sag is computed. */
    TABLERIG_STIFFNESS_KIND_UNKNOWN = 0,
    /** By `bending_stiffness_n_m2`. */
    TABLERIG_STIFFNESS_KIND_BENDING = 1,
    /** By `tube_outside_mm`, `tube_inside_mm` and `tube_modulus_n_per_mm2`. */
    TABLERIG_STIFFNESS_KIND_TUBE = 2,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum TablerigStiffnessKind TablerigStiffnessKind;
#else
typedef int32_t TablerigStiffnessKind;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

/** Which of the weights are on a rig. */
enum TablerigRigState
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
    /** Everything on. */
    TABLERIG_RIG_STATE_AS_SHOT = 0,
    /** Camera, lens and head off, counterweight on. */
    TABLERIG_RIG_STATE_CAMERA_OFF = 1,
    /** Counterweight off, camera on. */
    TABLERIG_RIG_STATE_COUNTERWEIGHT_OFF = 2,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum TablerigRigState TablerigRigState;
#else
typedef int32_t TablerigRigState;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

/** What was measured on the set. */
enum TablerigMeasuredKind
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
    /** `sensor_height_mm`, `aim_height_above_floor_mm` and `horizontal_distance_mm`. */
    TABLERIG_MEASURED_KIND_HEIGHT_AND_DISTANCE = 0,
    /** `sensor_distance_mm` by a tape, and `elevation_deg` by an inclinometer on the camera. */
    TABLERIG_MEASURED_KIND_TAPE_AND_INCLINOMETER = 1,
    /**
     * `sensor_height_mm`, `aim_height_above_floor_mm` and `sensor_distance_mm` by a tape. Near 90 degrees
     * the elevation is hardly determined by these: its uncertainty grows without bound.
     */
    TABLERIG_MEASURED_KIND_HEIGHT_AND_TAPE = 2,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum TablerigMeasuredKind TablerigMeasuredKind;
#else
typedef int32_t TablerigMeasuredKind;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

/** In which order camera and counterweight come off. */
enum TablerigRemoval
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
    /** There is no counterweight to take off. */
    TABLERIG_REMOVAL_NO_COUNTERWEIGHT = 0,
    /** The camera first: with it off and the counterweight on, the rig stands better. */
    TABLERIG_REMOVAL_CAMERA_FIRST = 1,
    /** The counterweight first. */
    TABLERIG_REMOVAL_COUNTERWEIGHT_FIRST = 2,
    /** Either alone would tip it: hold the boom, and take both off together. */
    TABLERIG_REMOVAL_HOLD_BOTH = 3,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum TablerigRemoval TablerigRemoval;
#else
typedef int32_t TablerigRemoval;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

/** How weighty a caution is. */
enum TablerigLevel
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
    /** Worth knowing. */
    TABLERIG_LEVEL_NOTE = 1,
    /** To be looked at before shooting. */
    TABLERIG_LEVEL_WARN = 2,
    /** Cannot be done as asked, or must not. */
    TABLERIG_LEVEL_STOP = 3,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum TablerigLevel TablerigLevel;
#else
typedef int32_t TablerigLevel;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

/** One reason for the advice on elevation; tablerig_advice_reason_text gives its sentence. */
enum TablerigAdviceReason
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
    /** The subject is flat. */
    TABLERIG_ADVICE_REASON_FLAT = 1,
    /** It is tall. */
    TABLERIG_ADVICE_REASON_TALL = 2,
    /** It is between flat and tall. */
    TABLERIG_ADVICE_REASON_BETWEEN = 3,
    /** Detail on the top. */
    TABLERIG_ADVICE_REASON_TOP_DETAIL = 4,
    /** Layers in the side. */
    TABLERIG_ADVICE_REASON_SIDE_LAYERS = 5,
    /** The contents of an opaque vessel. */
    TABLERIG_ADVICE_REASON_CONTENTS = 6,
    /** Layers behind clear glass. */
    TABLERIG_ADVICE_REASON_CLEAR_LAYERS = 7,
    /** A decorated glass. */
    TABLERIG_ADVICE_REASON_DECORATED_GLASS = 8,
    /** A laid table. */
    TABLERIG_ADVICE_REASON_LAID_TABLE = 9,
    /** The start is where the side is still nearly all that shows. */
    TABLERIG_ADVICE_REASON_START_SHOWS_SIDE = 10,
    /** The start is where the top is nearly all that shows. */
    TABLERIG_ADVICE_REASON_START_SHOWS_TOP = 11,
    /** The start is where top and side show alike. */
    TABLERIG_ADVICE_REASON_START_SHOWS_BOTH = 12,
    /** The start is the lowest from which most of the contents show. */
    TABLERIG_ADVICE_REASON_START_SHOWS_CONTENTS = 13,
    /** The start is the customary one. */
    TABLERIG_ADVICE_REASON_START_CUSTOMARY = 14,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum TablerigAdviceReason TablerigAdviceReason;
#else
typedef int32_t TablerigAdviceReason;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

/**
 * What a caution is about. The numbers are never used again for something else: 1xx lens and focus, 2xx the
 * picture, 3xx reach and room, 4xx standing. Later versions may add some. tablerig_caution_text gives the
 * sentence, tablerig_caution_unit the unit of value and limit.
 */
enum TablerigCautionCode
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
    /** The lens does not focus this near: sensor to aim point is under its closest focus. */
    TABLERIG_CAUTION_CODE_NEARER_THAN_FOCUS = 101,
    /** The frame is smaller than the lens can magnify. */
    TABLERIG_CAUTION_CODE_MAGNIFICATION_BEYOND_LENS = 102,
    /**
     * The focal length at this distance is taken on a straight line between the lens's two published
     * points; the limit is the marked one.
     */
    TABLERIG_CAUTION_CODE_FOCAL_LENGTH_ASSUMED = 103,
    /** The lens's front comes nearer to the aim point than the light needs. */
    TABLERIG_CAUTION_CODE_LIGHT_CLEARANCE = 104,
    /** The lens's front would touch the subject. */
    TABLERIG_CAUTION_CODE_LENS_MEETS_SUBJECT = 105,
    /** The f-number asked for does not hold the whole subject; the limit is the one that just does. */
    TABLERIG_CAUTION_CODE_SUBJECT_NOT_HELD = 106,
    /**
     * No opening of the lens both holds the subject and keeps diffraction under the limit of blur: the
     * value is the number of pictures of a focus stack.
     */
    TABLERIG_CAUTION_CODE_STACK_NEEDED = 107,
    /** The diffraction disc is larger than the limit of blur. */
    TABLERIG_CAUTION_CODE_DIFFRACTION_SHOWS = 108,
    /** The lens does not have this f-number; the limit is the nearest it has. */
    TABLERIG_CAUTION_CODE_F_NUMBER_NOT_ON_LENS = 109,
    /** No tilt lays the plane of focus on the table: the hinge is nearer than the focal length. */
    TABLERIG_CAUTION_CODE_TILT_IMPOSSIBLE = 110,
    /** The lens does not tilt as far as the plane of focus on the table needs. */
    TABLERIG_CAUTION_CODE_TILT_BEYOND_LENS = 111,
    /**
     * The top of the frame looks over the table's plane: the horizon, or the wall behind, is in the
     * picture.
     */
    TABLERIG_CAUTION_CODE_HORIZON_IN_FRAME = 201,
    /** The entrance pupil is not above the table top: nothing on the table's plane can be told. */
    TABLERIG_CAUTION_CODE_TABLE_FROM_BELOW = 202,
    /** The table's near edge hides this much of the subject's foot. */
    TABLERIG_CAUTION_CODE_NEAR_EDGE_HIDES_FOOT = 203,
    /** The table does not fill the picture; the value is the share it covers. */
    TABLERIG_CAUTION_CODE_TABLE_ENDS_IN_FRAME = 204,
    /** The frame cuts the subject; the value is the least room left. */
    TABLERIG_CAUTION_CODE_SUBJECT_CUT = 205,
    /** Straight-on, a lens this wide visibly stretches what is near the corners. */
    TABLERIG_CAUTION_CODE_STRETCH_SHOWS = 206,
    /** The elevation lies outside what usually suits such a subject. */
    TABLERIG_CAUTION_CODE_ELEVATION_OUTSIDE_ADVICE = 207,
    /** The subject stands over the table's edge. */
    TABLERIG_CAUTION_CODE_SUBJECT_OVERHANGS_TABLE = 208,
    /** The support does not go this high. */
    TABLERIG_CAUTION_CODE_PIVOT_TOO_HIGH = 301,
    /** The support does not go this low. */
    TABLERIG_CAUTION_CODE_PIVOT_TOO_LOW = 302,
    /** The camera hangs where the column cannot stand, and the support has no boom. */
    TABLERIG_CAUTION_CODE_BOOM_MISSING = 303,
    /** The boom does not reach this far. */
    TABLERIG_CAUTION_CODE_BOOM_TOO_SHORT = 304,
    /** The highest point of camera and rig does not fit under the ceiling. */
    TABLERIG_CAUTION_CODE_CEILING_TOO_LOW = 305,
    /** A foot of the support would stand in a wall; the value is the room left. */
    TABLERIG_CAUTION_CODE_FEET_OUTSIDE_BAY = 306,
    /** The boom's tail would meet a wall; the value is the room left. */
    TABLERIG_CAUTION_CODE_TAIL_OUTSIDE_BAY = 307,
    /** The camera would be in a wall; the value is the room left. */
    TABLERIG_CAUTION_CODE_CAMERA_OUTSIDE_BAY = 308,
    /** There is too little room behind the camera for a person. */
    TABLERIG_CAUTION_CODE_NO_ROOM_BEHIND_CAMERA = 309,
    /** The column would be in the picture over this length. */
    TABLERIG_CAUTION_CODE_COLUMN_IN_PICTURE = 310,
    /** The boom would be in the picture over this length. */
    TABLERIG_CAUTION_CODE_BOOM_IN_PICTURE = 311,
    /** Camera or pivot would be in the table: the value is the lowest point over the table top. */
    TABLERIG_CAUTION_CODE_CAMERA_MEETS_TABLE = 312,
    /**
     * The boom would pass through the camera: the value is its distance from the lens axis, the limit the
     * socket's. Turn the camera, or stand on another side.
     */
    TABLERIG_CAUTION_CODE_BOOM_MEETS_CAMERA = 313,
    /** The payload is this share of the payload that would tip the stand. */
    TABLERIG_CAUTION_CODE_PAYLOAD_SHARE = 401,
    /** As shot, the restoring moment is only this many times the overturning one. */
    TABLERIG_CAUTION_CODE_FACTOR_AS_SHOT = 402,
    /**
     * With the camera off and the counterweight on, the restoring moment is only this many times the
     * overturning one: the stand can fall backwards.
     */
    TABLERIG_CAUTION_CODE_FACTOR_CAMERA_OFF = 403,
    /**
     * With the counterweight off and the camera on, the restoring moment is only this many times the
     * overturning one.
     */
    TABLERIG_CAUTION_CODE_FACTOR_COUNTERWEIGHT_OFF = 404,
    /** This little tilt, the floor's slope taken off, tips the stand. */
    TABLERIG_CAUTION_CODE_TILT_TO_TIP = 405,
    /** This little push sideways tips the stand. */
    TABLERIG_CAUTION_CODE_PUSH_TO_TIP = 406,
    /**
     * The boom is springy, so what is let go by hand loads it twice; the restoring moment is only this
     * many times the overturning one.
     */
    TABLERIG_CAUTION_CODE_SPRINGY_BOOM = 407,
    /** The column carries more than its rating. */
    TABLERIG_CAUTION_CODE_SUPPORT_LOAD_RATING = 408,
    /** The boom carries more than its rating. */
    TABLERIG_CAUTION_CODE_BOOM_LOAD_RATING = 409,
    /** The clamp holds more moment than its rating. */
    TABLERIG_CAUTION_CODE_CLAMP_MOMENT_RATING = 410,
    /** The head carries more than its rating. */
    TABLERIG_CAUTION_CODE_HEAD_LOAD_RATING = 411,
    /** The head holds more moment than its rating. */
    TABLERIG_CAUTION_CODE_HEAD_MOMENT_RATING = 412,
    /** The floor is not level; its slope has been taken off the tilt margin. */
    TABLERIG_CAUTION_CODE_FLOOR_NOT_LEVEL = 413,
    /** The boom's sag moves the aim point further than the frame width may be off. */
    TABLERIG_CAUTION_CODE_SAG_MOVES_AIM = 414,
    /** This payload hangs over the table or over people: the cautions for overhead work apply. */
    TABLERIG_CAUTION_CODE_LOAD_OVERHEAD = 415,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum TablerigCautionCode TablerigCautionCode;
#else
typedef int32_t TablerigCautionCode;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

/**
 * A camera body. Lengths are along the lens axis ("ahead", "behind") or square to it ("above", "below"), as
 * the camera is held for the shot. Begin with tablerig_camera_init. Must be set: both sensor sides, the
 * socket's place, the body's top and the mass.
 */
typedef struct TablerigCamera {
    /** sizeof (TablerigCamera). */
    uint32_t size;
    /** 1 where `circle_of_confusion_mm` is given, else 0. */
    int32_t has_circle_of_confusion_mm;
    /** The sensor's longer side, 1 to 500. */
    double sensor_width_mm;
    /** The sensor's shorter side, 1 to 500. */
    double sensor_height_mm;
    /** The mounting socket ahead of the sensor, -500 to 2000. */
    double socket_ahead_mm;
    /** The mounting socket below the axis, -500 to 1000. */
    double socket_below_mm;
    /** The body's top above the axis, 0 to 1000. */
    double body_above_mm;
    /** Mass without the lens, 0 to 100. */
    double mass_kg;
    /** The body's back behind the sensor, 0 to 1000. Default 0. */
    double body_behind_mm;
    /** Centre of gravity ahead of the sensor, on the axis, -1000 to 2000. Default 0. */
    double centre_ahead_mm;
    /** Largest blur on the sensor that counts as sharp, 0.0001 to 5; left out, the sensor's diagonal / 1500. */
    double circle_of_confusion_mm;
} TablerigCamera;

/** What was wrong: which field, its value, and what it may be. Written only where a function refuses. */
typedef struct TablerigFault {
    /** The status that the function returned, a TablerigStatus. */
    int32_t status;
    /** 0. */
    int32_t reserved;
    /** The value that was given; 0 where the fault is not about a number. */
    double value;
    /**
     * The least value that would have been accepted, the other fields being as they are; minus infinity
     * where there is no least. Never over `most`: where nothing would be accepted, no range is named
     * (minus infinity to infinity), but for NO_ROOM_UNDER_CEILING, whose least is the ceiling it would take.
     */
    double least;
    /** The most that would have been accepted; infinity where there is no most. */
    double most;
    /**
     * The field's name with what it belongs to, such as "lens.focal_length_mm", or the argument's.
     * A static string: never null in a fault that was written, never to be freed.
     */
    const char *field;
} TablerigFault;

/** The shape in which a picture is delivered, such as 4 to 5. */
typedef struct TablerigAspect {
    /** The width's part of the ratio, 0.01 to 100. */
    double width;
    /** The height's part of the ratio, 0.01 to 100. */
    double height;
} TablerigAspect;

/** The part of the sensor that the delivered picture uses, as the camera is held. */
typedef struct TablerigUsedArea {
    /** Level side. */
    double width_mm;
    /** Upright side. */
    double height_mm;
} TablerigUsedArea;

/**
 * A lens as its maker specifies it. Begin with tablerig_lens_init. Must be set: focal length, both
 * f-numbers, mass and centre of gravity.
 */
typedef struct TablerigLens {
    /** sizeof (TablerigLens). */
    uint32_t size;
    /** 1 where `closest_focus_mm` is given, else 0. */
    int32_t has_closest_focus_mm;
    /** 1 where `largest_magnification` is given, else 0. */
    int32_t has_largest_magnification;
    /** 1 where `front_from_sensor_mm` is given, else 0. */
    int32_t has_front_from_sensor_mm;
    /** The marked focal length, for infinity, 1 to 3000. */
    double focal_length_mm;
    /** The widest opening's engraved f-number, 0.5 to 512. */
    double least_f_number;
    /** The smallest opening's engraved f-number, 0.5 to 512, not under `least_f_number`. */
    double most_f_number;
    /** Mass, 0 to 100. */
    double mass_kg;
    /** Centre of gravity ahead of the sensor, on the axis, -1000 to 5000. */
    double centre_ahead_mm;
    /** Closest focus, sensor to object, 1 to 100000. Left out, only the lens formula limits it. */
    double closest_focus_mm;
    /**
     * Magnification at the closest focus, 0.0001 to 20. With both given, the focal length changes as the
     * lens focuses; with one or none it does not (unit focusing).
     */
    double largest_magnification;
    /** Exit pupil / entrance pupil, 0.05 to 20. Default 1, a symmetric lens. */
    double pupil_ratio;
    /** From the front principal plane to the rear one, -1000 to 1000. Default 0, a thin lens. */
    double principal_separation_mm;
    /** The lens's front ahead of the sensor, 1 to 5000. Left out, room for the light is not checked. */
    double front_from_sensor_mm;
    /** How far a tilting lens tilts, 0 to 45. Default 0. */
    double largest_tilt_deg;
} TablerigLens;

/** A lens focused so that the plane through the aim point is pictured at a magnification. */
typedef struct TablerigFocusedLens {
    /** 1 where the focal length rests on the straight line between the lens's two published points. */
    int32_t focal_length_assumed;
    /** 0. */
    int32_t reserved;
    /** Picture size on the sensor / size in the plane through the aim point. */
    double magnification;
    /** Focal length at this magnification. */
    double focal_length_mm;
    /** The lens's pupil ratio, exit / entrance. */
    double pupil_ratio;
    /** Sensor to aim point. */
    double sensor_distance_mm;
    /** Rear principal plane to sensor. */
    double image_distance_mm;
    /** Aim point to front principal plane. */
    double object_distance_mm;
    /** Aim point to entrance pupil, the centre of perspective. */
    double pupil_distance_mm;
} TablerigFocusedLens;

/** How wide the lens sees, drawn from the entrance pupil. */
typedef struct TablerigFieldAngles {
    /** Across the frame's width. */
    double horizontal_deg;
    /** Across the frame's height. */
    double vertical_deg;
    /** From corner to corner. */
    double diagonal_deg;
} TablerigFieldAngles;

/** Where the subject lies along the axis, from the aim point. */
typedef struct TablerigSubjectDepth {
    /** Towards the camera to the subject's nearest part; negative where all of it lies behind. */
    double nearest_mm;
    /** Away from the camera to its farthest part. */
    double farthest_mm;
} TablerigSubjectDepth;

/** What is sharp around the plane through the aim point. */
typedef struct TablerigDepthOfField {
    /** Nearest sharp distance from the entrance pupil. */
    double near_limit_mm;
    /** Farthest sharp distance from the entrance pupil; infinite from the hyperfocal distance on. */
    double far_limit_mm;
    /** Sharp in front of the aim point. */
    double in_front_mm;
    /** Sharp behind the aim point; infinite with the far limit. */
    double behind_mm;
} TablerigDepthOfField;

/** An f-number of the third-stop scale. */
typedef struct TablerigThirdStop {
    /** The exact value, a power of 2^(1/6); this is what is reckoned with. */
    double f_number;
    /** What is engraved for it. */
    double engraved;
} TablerigThirdStop;

/** A focus stack that holds the subject. */
typedef struct TablerigFocusStack {
    /** Pictures needed; 4294967295 stands for that many or more. */
    uint32_t pictures;
    /** 0. */
    int32_t reserved;
    /**
     * The opening to shoot it at: the smallest that stays under the diffraction limit, or the lens's
     * widest.
     */
    double f_number;
    /** That opening as engraved. */
    double engraved;
    /** From one slice's plane of focus to the next, at the aim point. May be infinite. */
    double step_mm;
} TablerigFocusStack;

/** What is sharp, for one opening and one subject. */
typedef struct TablerigFocus {
    /** 1 where the limit of blur is the default, the sensor's diagonal / 1500. */
    int32_t circle_of_confusion_assumed;
    /** 1 where the brief named the opening, 0 where it was chosen. */
    int32_t f_number_given;
    /** 1 where the subject lies within the depth of field at `f_number`. */
    int32_t subject_held;
    /** 1 where an opening of the lens holds the subject: `f_number_to_hold` is there. */
    int32_t has_f_number_to_hold;
    /**
     * 1 where no opening of the lens both holds the subject and stays under the diffraction limit: `stack`
     * is there, unless the subject reaches the lens.
     */
    int32_t has_stack;
    /** 0. */
    int32_t reserved;
    /** The limit of blur on the sensor that everything here is reckoned with. */
    double circle_of_confusion_mm;
    /** The opening: the brief's, or else the one chosen to hold the subject. */
    double f_number;
    /** That opening as engraved. */
    double engraved;
    /** Depth of field at that opening. */
    struct TablerigDepthOfField depth_of_field;
    /**
     * The f-number that just holds the subject; 0 where the subject has no depth, infinite where it
     * reaches the lens.
     */
    double f_number_needed;
    /** The third stop that holds the subject, among those of the lens. */
    struct TablerigThirdStop f_number_to_hold;
    /** The opening's effective f-number, N (1 + m/p). */
    double effective_f_number;
    /** Light lost to the lens's extension, 2 log2 (1 + m/p) stops. */
    double exposure_loss_stops;
    /** Diffraction disc's diameter on the sensor at the opening. */
    double diffraction_disc_mm;
    /** The f-number at which that disc is as large as the limit of blur. */
    double diffraction_limit_f_number;
    /** The focus stack. */
    struct TablerigFocusStack stack;
} TablerigFocus;

/** The tilt that lays the plane of focus on the table. */
typedef struct TablerigTilt {
    /**
     * 1 where some tilt does it: `tilt_deg` is there. 0 where the hinge is nearer than the focal length or
     * the camera is under the table.
     */
    int32_t has_tilt_deg;
    /** 0. */
    int32_t reserved;
    /**
     * From the front principal point to the table's plane, parallel to the sensor, downwards in the
     * picture; infinite straight overhead, negative where the point lies under the table.
     */
    double hinge_distance_mm;
    /** The tilt; 0 straight overhead. */
    double tilt_deg;
} TablerigTilt;

/**
 * A rectangular table, its centre above the origin. Begin with tablerig_table_init. Must be set: width,
 * depth and height.
 */
typedef struct TablerigTable {
    /** sizeof (TablerigTable). */
    uint32_t size;
    /** What is under the top, a TablerigUnderside. Default TABLERIG_UNDERSIDE_OPEN. */
    int32_t underside;
    /** Along the front edge, 1 to 20000. */
    double width_mm;
    /** From the front edge to the back edge, 1 to 20000. */
    double depth_mm;
    /** The top above the floor, 0 to 3000. */
    double height_mm;
} TablerigTable;

/** A round opening at the subject's height, with contents below the rim. */
typedef struct TablerigVessel {
    /** Diameter inside, 0.1 to 10000; no wider than the subject. */
    double inside_diameter_mm;
    /** From the rim down to the contents, 0 to 5000; no deeper than the subject is high. */
    double contents_below_rim_mm;
} TablerigVessel;

/**
 * A subject on the table, standing under the aim point. Begin with tablerig_subject_init. Must be set: the
 * height, and width and depth of a box or the diameter of a round.
 */
typedef struct TablerigSubject {
    /** sizeof (TablerigSubject). */
    uint32_t size;
    /** Its outer shape, a TablerigShape. Default TABLERIG_SHAPE_BOX. */
    int32_t shape;
    /** What its picture lives by, a TablerigJudgedBy. Default TABLERIG_JUDGED_BY_FORM. */
    int32_t judged_by;
    /** 1 where `vessel` is given, else 0. */
    int32_t has_vessel;
    /** A box's side along the table's width, 0.1 to 10000. */
    double width_mm;
    /** A box's side along the table's depth, 0.1 to 10000. */
    double depth_mm;
    /** A round's diameter, 0.1 to 10000. */
    double diameter_mm;
    /** Height above the table top, 0 to 5000; 0 for something flat. */
    double height_mm;
    /** Its opening, if it is a vessel. */
    struct TablerigVessel vessel;
} TablerigSubject;

/**
 * The room around the table. A wall or ceiling left out is not there; tablerig_bay_init leaves all of them
 * out, and nothing must be set.
 */
typedef struct TablerigBay {
    /** sizeof (TablerigBay). */
    uint32_t size;
    /** 1 where there is a wall on the left, else 0. */
    int32_t has_left_mm;
    /** 1 where there is a wall on the right, else 0. */
    int32_t has_right_mm;
    /** 1 where there is a wall in front, else 0. */
    int32_t has_front_mm;
    /** 1 where there is a wall behind, else 0. */
    int32_t has_back_mm;
    /** 1 where there is a ceiling, else 0. */
    int32_t has_ceiling_mm;
    /** 1 where children or the public pass. Default 0. */
    int32_t public_passes;
    /** 1 where people are under the load: makers' ratings are then divided. Default 0. */
    int32_t people_under;
    /** From the table's centre to the wall on the left (-x), 0 to 100000. */
    double left_mm;
    /** From the table's centre to the wall on the right (+x), 0 to 100000. */
    double right_mm;
    /** From the table's centre to the wall in front (-y), 0 to 100000. */
    double front_mm;
    /** From the table's centre to the wall behind (+y), 0 to 100000. */
    double back_mm;
    /** The ceiling above the floor, 500 to 100000. */
    double ceiling_mm;
    /** Room kept under the ceiling, 0 to 5000. Default 0. */
    double ceiling_clearance_mm;
    /** Room wanted behind the camera for a person, 0 to 10000. Default 0. */
    double person_room_mm;
    /** The floor's steepest slope in hundredths, 0 to 30; up to 1 counts as level. Default 0. */
    double floor_slope_percent;
} TablerigBay;

/** A place in the room: the origin is on the floor under the centre of the table. */
typedef struct TablerigPoint {
    /** Along the table's width, to the right seen from the front edge. */
    double x_mm;
    /** Along the table's depth, away from the front edge. */
    double y_mm;
    /** Above the floor. */
    double z_mm;
} TablerigPoint;

/** A direction in the room, of length one. */
typedef struct TablerigDirection {
    /** Component along the table's width, to the right seen from the front edge. */
    double x;
    /** Component along the table's depth, away from the front edge. */
    double y;
    /** Upward component. */
    double z;
} TablerigDirection;

/** Where the camera is. All heights are above the floor. */
typedef struct TablerigPose {
    /** 1 where the lens's front is known: `front_clearance_mm` is there. */
    int32_t has_front_clearance_mm;
    /** 0. */
    int32_t reserved;
    /** The viewing direction. */
    struct TablerigDirection forward;
    /** To the right in the picture. */
    struct TablerigDirection right;
    /** Up in the picture. */
    struct TablerigDirection up;
    /** The point aimed at: on the axis and in the plane of focus. */
    struct TablerigPoint aim;
    /** The entrance pupil, the centre of perspective. */
    struct TablerigPoint pupil;
    /** The axis at the sensor. */
    struct TablerigPoint sensor;
    /** The mounting socket. */
    struct TablerigPoint socket;
    /** The head's pivot, which the support carries. */
    struct TablerigPoint pivot;
    /** The highest point of body and lens; what meets the ceiling. */
    double body_top_mm;
    /** From the aim point to the sensor, seen from above. */
    double sensor_from_aim_mm;
    /**
     * From the aim point to the pivot, seen from above, towards the camera; straight overhead, how far the
     * pivot stands beside the axis.
     */
    double pivot_from_aim_mm;
    /** From the nearest table edge to the sensor, seen from above; negative over the table. */
    double sensor_from_edge_mm;
    /** From the nearest table edge to the pivot, seen from above; negative over the table. */
    double pivot_from_edge_mm;
    /** Lens front to aim point. */
    double front_clearance_mm;
} TablerigPose;

/**
 * The frame as seen from the entrance pupil. Made from a plan by `{ plan.pose, plan.lens.pupil_distance_mm,
 * plan.frame_width_mm, plan.frame_height_mm }`.
 */
typedef struct TablerigView {
    /** The camera's place and directions. */
    struct TablerigPose pose;
    /** Aim point to entrance pupil. */
    double pupil_distance_mm;
    /** Width of the frame in the plane through the aim point. */
    double frame_width_mm;
    /** Height of the frame in that plane. */
    double frame_height_mm;
} TablerigView;

/** A place in the picture, measured in the plane through the aim point from the frame's centre. */
typedef struct TablerigPicturePoint {
    /** To the right of the frame's centre. */
    double right_mm;
    /** Above the frame's centre. */
    double up_mm;
} TablerigPicturePoint;

/** A place seen from above, on the floor or on the table. */
typedef struct TablerigFloorPoint {
    /** Along the table's width, to the right seen from the front edge. */
    double x_mm;
    /** Along the table's depth, away from the front edge. */
    double y_mm;
} TablerigFloorPoint;

/** The smallest board or cloth on the table that fills the frame. */
typedef struct TablerigBoard {
    /** Across the picture. */
    double width_mm;
    /** Along the picture. */
    double depth_mm;
    /** Its centre on the table. */
    struct TablerigFloorPoint centre;
    /** How far it is turned on the table, counter-clockwise: the bearing. */
    double turned_deg;
} TablerigBoard;

/** What of the table's plane the frame takes in. */
typedef struct TablerigFootprint {
    /**
     * 1 for each corner that has a point. A corner whose line of sight does not descend has none: there the
     * horizon, or the wall behind, is in the frame.
     */
    int32_t has_corners[4];
    /** 1 for each edge of the table that shows: front, right, back, left. */
    int32_t edges_in_frame[4];
    /** 1 where the bottom of the picture meets the table's plane: `near_width_mm` is there. */
    int32_t has_near_width_mm;
    /** 1 where the top of the picture meets the table's plane: `far_width_mm` is there. */
    int32_t has_far_width_mm;
    /** 1 where both do: `keystone_ratio` is there. */
    int32_t has_keystone_ratio;
    /** 1 where both do: `depth_mm` is there. */
    int32_t has_depth_mm;
    /** 1 where the table's plane is seen from below: then nothing else here is an answer. */
    int32_t from_below;
    /** 0 seen from below, else 1: `table_share` is there. */
    int32_t has_table_share;
    /** 1 where bottom and top of the picture meet the table's plane: `board` is there. */
    int32_t has_board;
    /** 0. */
    int32_t reserved;
    /**
     * The frame's corners on the table's plane: near left, near right, far right, far left, where near is
     * the bottom of the picture.
     */
    struct TablerigFloorPoint corners[4];
    /** Width at the bottom of the picture. */
    double near_width_mm;
    /** Width at the top of the picture. */
    double far_width_mm;
    /** Far width / near width. */
    double keystone_ratio;
    /** From the near to the far line. */
    double depth_mm;
    /** Share of the picture that the table top covers, were nothing on it. */
    double table_share;
    /** The smallest board or cloth that fills the frame. */
    struct TablerigBoard board;
} TablerigFootprint;

/**
 * A backdrop standing upright behind the aim point, square to the level viewing direction, its foot on the
 * table's plane.
 */
typedef struct TablerigBackdrop {
    /** Its level distance behind the aim point. */
    double behind_mm;
    /** Width it needs; 0 where it is not seen, infinite where no width is enough. */
    double width_mm;
    /** Height it needs above the table; 0 where it is not seen, infinite where no height is enough. */
    double height_mm;
    /** Share of the picture it covers. */
    double share;
} TablerigBackdrop;

/**
 * The subject's bounds in the picture, measured in the plane through the aim point from the frame's centre,
 * and what they leave.
 */
typedef struct TablerigOutline {
    /** Its leftmost part, positive to the right. */
    double left_mm;
    /** Its rightmost part. */
    double right_mm;
    /** Its lowest part, positive upwards. */
    double bottom_mm;
    /** Its highest part. */
    double top_mm;
    /** Its width / the frame's. */
    double fill_width;
    /** Its height / the frame's. */
    double fill_height;
    /** Frame left above it; negative where it is cut. */
    double room_above_mm;
    /** Frame left below it. */
    double room_below_mm;
    /** Frame left on its left. */
    double room_left_mm;
    /** Frame left on its right. */
    double room_right_mm;
} TablerigOutline;

/** How much of what is seen is top, side or contents. */
typedef struct TablerigShares {
    /** 1 where the subject is a vessel: `contents` is there. */
    int32_t has_contents;
    /** 1 where the subject is a vessel: `contents_from_far` is there. */
    int32_t has_contents_from_far;
    /**
     * Top: sin e x top area / (sin e x top area + cos e x side area as seen from the bearing); 0 where the
     * top is not seen.
     */
    double top;
    /** Side: the rest. */
    double side;
    /** Share of a vessel's contents that shows past the near wall, for the real camera. */
    double contents;
    /** The same from far off. */
    double contents_from_far;
} TablerigShares;

/** What perspective does to the picture. */
typedef struct TablerigPerspective {
    /** 0 where the subject reaches the entrance pupil, else 1: `size_ratio` is there. */
    int32_t has_size_ratio;
    /** 0 where the subject reaches the entrance pupil, else 1: `convergence` is there. */
    int32_t has_convergence;
    /** Stretch of a small sphere at the frame's side, 1 / cos of its angle off the axis. */
    double side_stretch;
    /** Stretch at the frame's corner. */
    double corner_stretch;
    /** Image size of the subject's nearest part over that of its farthest. */
    double size_ratio;
    /** Convergence of uprights: image scale at the subject's top over that at its foot, on its axis. */
    double convergence;
} TablerigPerspective;

/** The head between boom or column and camera. Must be set: mass and pivot. */
typedef struct TablerigHead {
    /** 1 where `rated_load_kg` is given, else 0. */
    int32_t has_rated_load_kg;
    /** 1 where `rated_moment_n_m` is given, else 0. */
    int32_t has_rated_moment_n_m;
    /** Mass, taken to hang on the lens axis at the socket, 0 to 100. */
    double mass_kg;
    /** From the socket to the head's pivot, square to the axis, -500 to 1000. */
    double pivot_below_socket_mm;
    /** The maker's rating of its load, 0 to 1000. Left out, it is not checked. */
    double rated_load_kg;
    /** The maker's rating of the moment it holds, 0 to 10000. Left out, it is not checked. */
    double rated_moment_n_m;
} TablerigHead;

/** A sandbag, hung clear of the floor so that it pulls. */
typedef struct TablerigSandbag {
    /** Mass, 0 to 200; 0 for no bag. */
    double mass_kg;
    /** How far from the column's axis it hangs, 0 to 5000. */
    double out_mm;
    /**
     * In which direction, counter-clockwise from the boom's (without a boom: from the direction to the
     * table), -360 to 360: 0 under the load, 180 behind.
     */
    double direction_deg;
    /** Its centre of gravity above the floor, 0 to 20000. */
    double height_mm;
} TablerigSandbag;

/** How stiff a boom is in bending. */
typedef struct TablerigStiffness {
    /** How it is given, a TablerigStiffnessKind. Default TABLERIG_STIFFNESS_KIND_UNKNOWN: no sag is computed. */
    int32_t kind;
    /** 0. */
    int32_t reserved;
    /** EI of the boom's section in newton square metres, 0.001 to 1e12. */
    double bending_stiffness_n_m2;
    /** Outside diameter of a round tube, 1 to 1000. */
    double tube_outside_mm;
    /** Inside diameter of the tube, 0 to 1000 and under the outside one; 0 for a solid bar. */
    double tube_inside_mm;
    /**
     * Young's modulus of the tube in newtons per square millimetre, 1 to 2000000: aluminium 69000, steel
     * 207000.
     */
    double tube_modulus_n_per_mm2;
} TablerigStiffness;

/**
 * A boom across the column, from its tail's end to the head's pivot. Must be set: longest reach, tail and
 * mass.
 */
typedef struct TablerigBoom {
    /** 1 where `counterweight_out_mm` is given, else 0. */
    int32_t has_counterweight_out_mm;
    /** 1 where `damping_ratio` is given, else 0. */
    int32_t has_damping_ratio;
    /** 1 where `rated_load_kg` is given, else 0. */
    int32_t has_rated_load_kg;
    /** 1 where `rated_clamp_moment_n_m` is given, else 0. */
    int32_t has_rated_clamp_moment_n_m;
    /** Longest horizontal reach from the column's axis to the head's pivot, 1 to 10000. */
    double longest_reach_mm;
    /** Its length behind the clamp, 0 to 10000. */
    double tail_mm;
    /** Mass, its centre of gravity at mid-length, 0 to 200. */
    double mass_kg;
    /** How far it rises towards the camera, -60 to 60. Default 0. */
    double pitch_deg;
    /** Counterweight on the tail, 0 to 500. Default 0. */
    double counterweight_kg;
    /**
     * Where on the tail the counterweight hangs, along it from the clamp, 0 to the tail's length. Left out,
     * at the tail's end.
     */
    double counterweight_out_mm;
    /**
     * Share of critical damping with which its swing dies down, 0.0001 to 0.99. Left out, no waiting time
     * is computed.
     */
    double damping_ratio;
    /** The maker's rating of the load at full reach, 0 to 1000. Left out, it is not checked. */
    double rated_load_kg;
    /** The maker's rating of what the clamp may hold unbalanced, 0 to 100000. Left out, it is not checked. */
    double rated_clamp_moment_n_m;
    /** How stiff it is. */
    struct TablerigStiffness stiffness;
} TablerigBoom;

/**
 * What the camera stands on; a tripod is a support without a boom. Begin with tablerig_support_init. Must be
 * set: the pivot's range, column, feet, legs' top, mass and its height, and the head.
 */
typedef struct TablerigSupport {
    /** sizeof (TablerigSupport). */
    uint32_t size;
    /** Feet, 3 to 8, evenly spaced on a circle. Must be set; tablerig_support_init leaves 0. */
    uint32_t leg_count;
    /** 1 where `first_leg_deg` is given, else 0. */
    int32_t has_first_leg_deg;
    /** 1 where `rated_load_kg` is given, else 0. */
    int32_t has_rated_load_kg;
    /** 1 where there is a boom, else 0. */
    int32_t has_boom;
    /** 0. */
    int32_t reserved;
    /** The lowest the column carries the head's pivot, or the boom's clamp, 0 to 20000. */
    double lowest_pivot_mm;
    /** The highest, 0 to 20000. */
    double highest_pivot_mm;
    /** Half the column's thickness, 0 to 1000. */
    double column_radius_mm;
    /** Radius of the circle on which the feet stand, 1 to 5000. */
    double foot_radius_mm;
    /** The height at which the legs meet the column, 1 to 20000. */
    double legs_top_mm;
    /** Mass of column and legs, 0 to 500. */
    double mass_kg;
    /** Centre of gravity of column and legs above the floor, on the column's axis, 0 to 20000. */
    double centre_height_mm;
    /** The head. */
    struct TablerigHead head;
    /** Room kept between the stand and the table, 0 to 2000. Default 0. */
    double table_clearance_mm;
    /** Weight added to the base, on the column's axis, 0 to 1000. Default 0. */
    double base_mass_kg;
    /** That weight's height, 0 to 20000. Default 0. */
    double base_height_mm;
    /**
     * The first leg's direction, counter-clockwise from the boom's (without a boom: from the direction to
     * the table), -360 to 360. Left out: 0 with a boom, a leg under the load; half a leg spacing without
     * one, the gap facing the table.
     */
    double first_leg_deg;
    /** The maker's rating of what the column may carry in all, 0 to 1000. Left out, it is not checked. */
    double rated_load_kg;
    /** Sandbags where they hang. Default none. */
    struct TablerigSandbag sandbags[TABLERIG_MOST_SANDBAGS];
    /** The boom. */
    struct TablerigBoom boom;
} TablerigSupport;

/** Where the support stands, and how its boom lies. */
typedef struct TablerigPlacement {
    /** 1 where a boom carries the camera; 0 where the column stands under the pivot. */
    int32_t boom_used;
    /** The side of the table on which the column stands, a TablerigSide; without a boom, of the nearest edge. */
    int32_t side;
    /** 1 where a boom is used and the support has one: `tail_end` is there. */
    int32_t has_tail_end;
    /** How many of `feet` there are. */
    uint32_t leg_count;
    /** Where the column stands. */
    struct TablerigFloorPoint column;
    /** The level direction from the column in which the boom points; without a boom, towards the table. */
    struct TablerigDirection towards;
    /** Nearest that the column's axis can come to the edge on that side. */
    double stand_off_mm;
    /** From the column's axis to the pivot, horizontally; 0 without a boom. */
    double reach_mm;
    /** The reach it would take from each side: front, right, back, left. */
    double reach_from_sides_mm[4];
    /** Along the boom from the clamp to the pivot, reach / cos pitch. */
    double boom_length_mm;
    /** The clamp above the floor, reach x tan pitch under the pivot; without a boom, the pivot itself. */
    double clamp_height_mm;
    /** The tail's end. */
    struct TablerigPoint tail_end;
    /** The first leg's direction, counter-clockwise from `towards`. */
    double first_leg_deg;
    /** The feet on the floor, the first `leg_count` of them; the rest repeat the column's place. */
    struct TablerigFloorPoint feet[TABLERIG_MOST_LEGS];
    /** The highest point of camera and rig above the floor. */
    double highest_point_mm;
} TablerigPlacement;

/**
 * What the bay leaves around camera and rig; negative where they do not fit, infinite where there is no wall
 * or ceiling.
 */
typedef struct TablerigBayRoom {
    /** From the outermost foot to the nearest wall. */
    double feet_mm;
    /** From the tail's end to the nearest wall; infinite without a boom. */
    double tail_mm;
    /** From the camera (body's back, pupil and pivot) to the nearest wall. */
    double camera_mm;
    /** From the highest point to the ceiling less the clearance. */
    double ceiling_mm;
    /**
     * Behind the camera, in the direction of its bearing, from the camera's back or from the table's edge
     * if that lies further out.
     */
    double behind_camera_mm;
} TablerigBayRoom;

/** How much of the support shows in the picture, were nothing before it. */
typedef struct TablerigSupportInPicture {
    /** Length of the column inside the frame. */
    double column_mm;
    /** Length of the boom and its tail inside the frame. */
    double boom_mm;
} TablerigSupportInPicture;

/** Camera, lens and head as one weight on the lens axis. */
typedef struct TablerigPayload {
    /** Mass of camera, lens and head. */
    double mass_kg;
    /** Their centre of gravity ahead of the sensor, on the axis. */
    double centre_ahead_mm;
    /** That centre in the room. */
    struct TablerigPoint centre;
    /** Moment at the head's pivot: payload weight x its centre's horizontal distance from the pivot. */
    double head_moment_n_m;
} TablerigPayload;

/**
 * A weight in the rig's own coordinates: x from the column's axis along the boom (without one: towards the
 * table), y to its left, z up from the floor.
 */
typedef struct TablerigWeight {
    /** Mass. */
    double mass_kg;
    /** Along the boom from the column's axis. */
    double x_mm;
    /** To the boom's left. */
    double y_mm;
    /** Above the floor. */
    double z_mm;
} TablerigWeight;

/** What hangs on the rig. */
typedef struct TablerigLoads {
    /** Camera, lens and head. */
    struct TablerigWeight payload;
    /** The boom; without mass if there is none. */
    struct TablerigWeight boom;
    /** The counterweight; without mass if there is none. */
    struct TablerigWeight counterweight;
    /** Column and legs, the weight on the base, and the sandbags. */
    struct TablerigWeight rest[TABLERIG_RESTING_WEIGHTS];
} TablerigLoads;

/** An edge of the polygon of feet: its outward direction in the rig's own coordinates. */
typedef struct TablerigEdge {
    /** Component along the boom. */
    double x;
    /** Component to the boom's left. */
    double y;
} TablerigEdge;

/** The feet as a polygon around the column. */
typedef struct TablerigFeet {
    /** How many. */
    uint32_t count;
    /** 0. */
    int32_t reserved;
    /** The edges, the first `count` of them: number 1 lies between the first leg and the next. */
    struct TablerigEdge edges[TABLERIG_MOST_LEGS];
    /** From the column's axis to each edge. */
    double apothem_mm;
    /** The first leg's direction from the boom's, counter-clockwise. */
    double first_leg_deg;
} TablerigFeet;

/** How the rig stands in one state. */
typedef struct TablerigStanding {
    /** The edge with the smallest margin, counted from 1: between the leg of that number and the next. */
    uint32_t margin_edge;
    /** The edge with the smallest factor; that of the margin where the factor is infinite. */
    uint32_t factor_edge;
    /** Everything that stands on the feet. */
    double total_mass_kg;
    /** The whole centre of gravity, in the room. */
    struct TablerigPoint centre;
    /** The centre of gravity inside the nearest edge; negative: it tips. */
    double margin_mm;
    /** Smallest restoring over overturning moment about an edge; infinite where no weight hangs outside. */
    double factor;
    /** The outward direction of the edge of that factor, counter-clockwise from the boom's. */
    double factor_edge_direction_deg;
    /** Moment that restores about that edge. */
    double restoring_moment_n_m;
    /** Moment that overturns about that edge. */
    double overturning_moment_n_m;
    /** The tilt of the floor that tips it, in the worst direction. */
    double tilt_to_tip_deg;
    /** The sideways push at the pivot that tips it, in the worst direction; infinite at floor height. */
    double push_to_tip_n;
    /** What the boom leaves unbalanced at the clamp; 0 without a boom. */
    double clamp_moment_n_m;
} TablerigStanding;

/**
 * How the rig stands: the three states, and the payload against the one that would tip it. These are
 * computed figures: the makers' ratings rule, and local codes and a qualified rigger decide.
 */
typedef struct TablerigStability {
    /** Everything on. */
    struct TablerigStanding as_shot;
    /** Camera, lens and head off, counterweight on. */
    struct TablerigStanding camera_off;
    /** Counterweight off, camera on. */
    struct TablerigStanding counterweight_off;
    /** The payload (the whole of it) that would tip the rig; infinite where it hangs inside the feet. */
    double payload_to_tip_kg;
    /** The payload over that; infinite where the rig tips without any. */
    double payload_share;
} TablerigStability;

/**
 * The limits for cautions about standing, and what the solved weights are to reach. All borrowed: no
 * standard is written for camera stands. Nothing must be set; tablerig_criteria_init fills in the defaults,
 * each borrowed from the field named.
 */
typedef struct TablerigCriteria {
    /** sizeof (TablerigCriteria). */
    uint32_t size;
    /** 1 where the solved base weight is to keep the wanted factor as shot. Default 1. */
    int32_t hold_as_shot;
    /** 1 where it is to keep it with the camera off. Default 1. */
    int32_t hold_camera_off;
    /** 1 where it is to keep it with the counterweight off. Default 0. */
    int32_t hold_counterweight_off;
    /**
     * Payload over the payload that tips the stand: a note above this, 0 to 10. Default 0.667, 66.6 % of
     * tipping (AS 1418.5 via the Queensland Mobile Crane Code of Practice 2006, 11.1.1).
     */
    double payload_share_note;
    /** ... a warning above this. Default 0.75 (the same). */
    double payload_share_warn;
    /** ... a stop from this on. Default 1. */
    double payload_share_stop;
    /**
     * Restoring over overturning moment: a note under this, 0 to 100. Default 2: a load let go by hand
     * deflects twice the static (mechanics texts).
     */
    double factor_note;
    /**
     * ... a warning under this. Default 1.5, the outrigger ratio of Quebec S-2.1 r.4, 3.9.15; at least 1.3
     * in DGUV Vorschrift 70, section 23(2).
     */
    double factor_warn;
    /** ... a stop under this. Default 1. */
    double factor_stop;
    /** A boom that swings slower than this is springy, 0 to 1000. Default 3. */
    double springy_frequency_hz;
    /** The factor under which a springy boom gets a warning, 0 to 100. Default 2. */
    double springy_factor_warn;
    /** Tilt that tips the stand: a warning under this, 0 to 90. Default 10 (IEC 60065, 19.1). */
    double tilt_warn_deg;
    /** ... a stop under this. Default 5 (IEC 60601-1, as quoted). */
    double tilt_stop_deg;
    /** ... a warning under this where children or the public pass. Default 15 (IEC 60598-2-10, as quoted). */
    double tilt_public_warn_deg;
    /**
     * Sideways push that tips the stand, as a share of its weight: a warning under this, 0 to 10. Default
     * 0.13 (IEC 62368-1, as quoted).
     */
    double push_share_warn;
    /** A push above this is never asked for, 0 to 100000. Default 250 (the same). */
    double push_most_n;
    /** The push is taken at the pivot, but no higher than this, 1 to 20000. Default 1500 (the same). */
    double push_height_most_mm;
    /**
     * Makers' ratings are divided by this where people are under the load, 1 to 100. Default 2 (DGUV
     * Information 215-313, 1.1).
     */
    double people_rating_divisor;
    /** The factor that the solved base weight and the longest reach keep, 1 to 100. Default 2. */
    double wanted_factor;
    /**
     * A touched boom counts as settled when its swing has died down to this share, 0.000001 to 0.99.
     * Default 0.01 (common practice, no source).
     */
    double settled_share;
} TablerigCriteria;

/** What would make the rig stand better. */
typedef struct TablerigBallast {
    /** 0 without a boom, or where the counterweight would hang at the clamp itself; else 1. */
    int32_t has_counterweight_to_balance_kg;
    /** 1 where some reach keeps the wanted factor, 0 where none does or without a boom. */
    int32_t has_longest_reach_mm;
    /** The counterweight that balances the boom at the clamp. */
    double counterweight_to_balance_kg;
    /** Weight to add on the column's axis so that the wanted factor is kept in the states asked for. */
    double base_to_add_kg;
    /**
     * The longest reach that keeps the wanted factor as shot, everything else as it is, the pivot staying
     * where it is and the column moving; no longer than the boom reaches.
     */
    double longest_reach_mm;
    /**
     * Direction of the first leg, counter-clockwise from the boom's, that gives the largest margin as shot:
     * a leg under the centre of gravity.
     */
    double best_first_leg_deg;
    /** That margin. */
    double best_margin_mm;
    /**
     * Direction of the first leg that gives the smallest margin as shot: an edge square to the centre of
     * gravity.
     */
    double worst_first_leg_deg;
    /** That margin. */
    double worst_margin_mm;
} TablerigBallast;

/** What bending does to the picture. */
typedef struct TablerigSag {
    /** 1 where the boom's damping ratio is given: `settling_s` is there. */
    int32_t has_settling_s;
    /** 0. */
    int32_t reserved;
    /** The boom's end moves, square to the boom. */
    double deflection_mm;
    /** Height lost by the camera. */
    double height_lost_mm;
    /** The boom's end turns down. */
    double end_slope_deg;
    /** The aim point moves in the picture's plane: sensor distance x slope. */
    double aim_shift_mm;
    /** First bending frequency; infinite without any mass. */
    double frequency_hz;
    /** How long to wait after touching it until the swing has died down to the settled share. */
    double settling_s;
} TablerigSag;

/** Advice on elevation for a subject. It never overrules the brief. */
typedef struct TablerigAdvice {
    /** Why, the weightiest first, each a TablerigAdviceReason; 0 for none. */
    int32_t reasons[3];
    /** 1 where the subject is a vessel: `contents_at_start` is there. */
    int32_t has_contents_at_start;
    /** 1 where the subject is a vessel: `half_contents_from_deg` is there. */
    int32_t has_half_contents_from_deg;
    /** 0. */
    int32_t reserved;
    /** Lowest elevation advised. */
    double least_deg;
    /** Highest. */
    double most_deg;
    /** Where to begin looking. */
    double start_deg;
    /** Share of what is seen that is top, from the start. */
    double top_share_at_start;
    /** Share of a vessel's contents that shows from the start, from far off. */
    double contents_at_start;
    /** The elevation from which top and side show alike; 90 where the side never falls to that. */
    double half_top_from_deg;
    /** The lowest elevation from which half of a vessel's contents show, from far off. */
    double half_contents_from_deg;
} TablerigAdvice;

/** A measured value with its standard uncertainty, in the unit of the field that holds it. */
typedef struct TablerigMeasurement {
    /** What was read. */
    double value;
    /** One standard deviation, 0 or more. In a result it may be infinite. */
    double uncertainty;
} TablerigMeasurement;

/**
 * What was measured on the set. Heights are above the floor; the sensor's place is its mark on the body.
 * Begin with tablerig_measured_init, then set `kind` and the fields that it names.
 */
typedef struct TablerigMeasured {
    /** sizeof (TablerigMeasured). */
    uint32_t size;
    /**
     * Which of the fields count, a TablerigMeasuredKind. Default
     * TABLERIG_MEASURED_KIND_HEIGHT_AND_DISTANCE.
     */
    int32_t kind;
    /** Height of the axis at the sensor, 0 to 100000. */
    struct TablerigMeasurement sensor_height_mm;
    /** Height of the aim point, 0 to 100000. */
    struct TablerigMeasurement aim_height_above_floor_mm;
    /** From the aim point to the sensor, seen from above, 0 to 100000. */
    struct TablerigMeasurement horizontal_distance_mm;
    /** Straight from the aim point to the sensor, 0.001 to 1000000. */
    struct TablerigMeasurement sensor_distance_mm;
    /** Elevation of the axis, -90 to 90. */
    struct TablerigMeasurement elevation_deg;
} TablerigMeasured;

/**
 * How far the sensor may be moved from its planned place, the camera always aimed at the aim point, so that
 * elevation and frame width stay within their tolerances. Each move alone; exact; infinite where no move in
 * that direction leaves them.
 */
typedef struct TablerigTolerance {
    /** Up. */
    double up_mm;
    /** Down. */
    double down_mm;
    /** Level, away from the aim point. */
    double away_mm;
    /** Level, towards the aim point. */
    double closer_mm;
    /** Drift across the frame from side to side of the roll tolerance. */
    double roll_drift_mm;
} TablerigTolerance;

/** What the measured set gives. Uncertainties are first order, the measured values taken as independent. */
typedef struct TablerigRealShot {
    /** Elevation; its uncertainty may be infinite, from heights and a tape straight overhead. */
    struct TablerigMeasurement elevation_deg;
    /** Frame width in the plane through the aim point, with its uncertainty. */
    struct TablerigMeasurement frame_width_mm;
    /** Straight from the aim point to the sensor. */
    struct TablerigMeasurement sensor_distance_mm;
    /** Picture size on the sensor / size in the plane through the aim point. */
    double magnification;
} TablerigRealShot;

/**
 * What the picture is to be. Begin with tablerig_shot_init. Must be set: the elevation, and the frame width
 * or, with `framing`, a share to fill.
 */
typedef struct TablerigShot {
    /** sizeof (TablerigShot). */
    uint32_t size;
    /**
     * How much the frame takes in, a TablerigFraming: it says which of `frame_width_mm`, `fill_width` and
     * `fill_height` counts. Default TABLERIG_FRAMING_FRAME_WIDTH.
     */
    int32_t framing;
    /** How the camera is held, a TablerigHold. Default TABLERIG_HOLD_ACROSS. */
    int32_t hold;
    /** 1 where the plane of focus is to lie on the table, with a tilting lens. Default 0. */
    int32_t focus_on_table;
    /** 1 where `delivered_aspect` is given, else 0. */
    int32_t has_delivered_aspect;
    /** 1 where `aim_height_mm` is given, else 0. */
    int32_t has_aim_height_mm;
    /** 1 where `f_number` is given, else 0. */
    int32_t has_f_number;
    /** 1 where `backdrop_behind_mm` is given, else 0. */
    int32_t has_backdrop_behind_mm;
    /** 1 where `side` is given, else 0. */
    int32_t has_side;
    /** The side on which the stand is to be, a TablerigSide; left out, the one of the shortest reach. */
    int32_t side;
    /**
     * How far the camera stands above the horizontal through the aim point, -60 to 90: 0 straight-on, 90
     * straight overhead, negative from below.
     */
    double elevation_deg;
    /** The frame's width in the plane through the aim point, 1 to 100000. */
    double frame_width_mm;
    /** The share of the frame's width that the subject is to fill, 0.01 to 1. */
    double fill_width;
    /** The share of the frame's height that the subject is to fill, 0.01 to 1. */
    double fill_height;
    /**
     * Where the camera stands around the subject seen from above, counter-clockwise, -360 to 360: 0 in
     * front, 90 to the right, 180 behind, 270 to the left. Straight overhead it still says where the top of
     * the frame points. Default 0.
     */
    double bearing_deg;
    /** Aim point, and subject, to the right of the table's centre, -10000 to 10000. Default 0. */
    double aim_x_mm;
    /** Aim point, and subject, behind the table's centre, -10000 to 10000. Default 0. */
    double aim_y_mm;
    /** Aim point above the table top, -1000 to 5000; left out, half the subject's height. */
    double aim_height_mm;
    /** The engraved f-number to shoot at, 0.5 to 512; left out, chosen to hold the subject. */
    double f_number;
    /** How far behind the aim point a backdrop stands, 1 to 20000; left out, there is none. */
    double backdrop_behind_mm;
    /** Least room the light needs between lens front and aim point, 0 to 10000. Default 100. */
    double light_clearance_mm;
    /** Share of each slice of a focus stack that the next one overlaps, 0 to 0.95. Default 0.3. */
    double stack_overlap;
    /** How far the elevation may be off, 0.001 to 20. Default 1. */
    double elevation_tolerance_deg;
    /** Share by which the frame width may be off, 0.0001 to 0.5. Default 0.02. */
    double frame_width_tolerance;
    /** How far from level the camera may be rolled, 0 to 20. Default 0.5. */
    double roll_tolerance_deg;
    /** The delivered picture's shape; left out, the sensor's own. */
    struct TablerigAspect delivered_aspect;
} TablerigShot;

/**
 * One shot with everything it is to be shot with. The parts stay the caller's and are only read; several
 * briefs may share them. Begin with tablerig_brief_init, then point to the parts.
 */
typedef struct TablerigBrief {
    /** sizeof (TablerigBrief). */
    uint32_t size;
    /** 0. */
    int32_t reserved;
    /** What the picture is to be. */
    const struct TablerigShot *shot;
    /** The camera. */
    const struct TablerigCamera *camera;
    /** The lens. */
    const struct TablerigLens *lens;
    /** The table. */
    const struct TablerigTable *table;
    /** The subject, standing under the aim point. */
    const struct TablerigSubject *subject;
    /** What holds the camera. */
    const struct TablerigSupport *support;
    /** The room; null for one without walls. */
    const struct TablerigBay *bay;
    /** The limits for cautions; null for the defaults. */
    const struct TablerigCriteria *criteria;
} TablerigBrief;

/** One caution of a plan: what cannot be done as asked, or should be looked at. */
typedef struct TablerigCaution {
    /** What it is about, a TablerigCautionCode. */
    int32_t code;
    /** How weighty it is, a TablerigLevel. */
    int32_t level;
    /** The value that was found, in the code's unit. May be infinite. */
    double value;
    /** The limit it is held against, in the same unit. May be infinite. */
    double limit;
} TablerigCaution;

/**
 * Everything needed to rig a shot. Begin with tablerig_plan_init, or set `size`. Read the cautions before
 * the numbers; where `overhead` is 1, the sentences of tablerig_overhead_caution go with them.
 */
typedef struct TablerigPlan {
    /** sizeof (TablerigPlan). */
    uint32_t size;
    /**
     * 1 where a load hangs above the table or a person: the cautions for overhead work then go with every
     * number.
     */
    int32_t overhead;
    /** In which order camera and counterweight come off, a TablerigRemoval. */
    int32_t removal;
    /** How many of `cautions` there are. */
    uint32_t caution_count;
    /** 1 where the brief has a backdrop: `backdrop` is there. */
    int32_t has_backdrop;
    /** 0 where the subject reaches the entrance pupil, else 1: `outline` is there. */
    int32_t has_outline;
    /** 1 where a boom of known stiffness is used: `sag` is there. */
    int32_t has_sag;
    /** 0. */
    int32_t reserved;
    /** Width of the frame in the plane through the aim point. */
    double frame_width_mm;
    /** Height of the frame in that plane. */
    double frame_height_mm;
    /** The aim point above the table top. */
    double aim_height_mm;
    /** The part of the sensor that the delivered picture uses. */
    struct TablerigUsedArea used_area;
    /** The lens as focused. */
    struct TablerigFocusedLens lens;
    /** How wide it sees. */
    struct TablerigFieldAngles field_angles;
    /** Where the camera is. */
    struct TablerigPose pose;
    /** The frame on the table. */
    struct TablerigFootprint footprint;
    /** The backdrop. */
    struct TablerigBackdrop backdrop;
    /** Where the subject lies along the axis. */
    struct TablerigSubjectDepth subject_depth;
    /** The subject in the picture. */
    struct TablerigOutline outline;
    /** What shows of its top, side and contents. */
    struct TablerigShares shares;
    /** What is sharp. */
    struct TablerigFocus focus;
    /** The tilt that lays the plane of focus on the table. */
    struct TablerigTilt tilt;
    /** How it will look. */
    struct TablerigPerspective perspective;
    /** Which elevation suits the subject. */
    struct TablerigAdvice advice;
    /** Camera, lens and head as one weight. */
    struct TablerigPayload payload;
    /** Where the support stands, and its boom. */
    struct TablerigPlacement placement;
    /** What the bay leaves around it. */
    struct TablerigBayRoom bay_room;
    /** How much of it shows in the picture. */
    struct TablerigSupportInPicture support_in_picture;
    /** Whether it stands. */
    struct TablerigStability stability;
    /** What would make it stand better. */
    struct TablerigBallast ballast;
    /** How the boom bends. */
    struct TablerigSag sag;
    /** How exactly it must be set. */
    struct TablerigTolerance tolerance;
    /** What to look at, in the order of the codes. */
    struct TablerigCaution cautions[TABLERIG_MOST_CAUTIONS];
} TablerigPlan;

/** What one input may be. The strings are static. */
typedef struct TablerigRange {
    /** The least value accepted. */
    double least;
    /** The most. */
    double most;
    /** The field's name with what it belongs to, such as "lens.focal_length_mm". */
    const char *field;
    /** The unit of the bare number: "mm", "deg", "kg", "n_m", or "" for a pure number. */
    const char *unit;
    /** What the quantity is, in a few words. */
    const char *meaning;
} TablerigRange;

#ifdef __cplusplus
extern "C" {
#endif // __cplusplus

/**
 * Version of the library that is linked, made like TABLERIG_VERSION. It may differ from the header's: a
 * program compiled with either works with the other as long as TABLERIG_ABI is the same.
 */
uint32_t tablerig_version(void);

/** Version of the library that is linked, such as "0.1.0". */
const char *tablerig_version_text(void);

/**
 * Fills a camera of `size` bytes, sizeof (TablerigCamera), with its defaults; what has none becomes
 * TABLERIG_UNSET.
 */
int32_t tablerig_camera_init(struct TablerigCamera *camera, uint32_t size);

/** Refuses a camera with a field out of its range, and says which in `fault`, which may be null. */
int32_t tablerig_camera_check(const struct TablerigCamera *camera, struct TablerigFault *fault);

/**
 * The part of the sensor that the delivered picture uses: the largest rectangle of `delivered_aspect`
 * inside the sensor as held, the whole of it where `delivered_aspect` is null. `hold` is a TablerigHold.
 */
int32_t tablerig_used_area(const struct TablerigCamera *camera,
                           int32_t hold,
                           const struct TablerigAspect *delivered_aspect,
                           struct TablerigUsedArea *used,
                           struct TablerigFault *fault);

/** The largest blur on the sensor that counts as sharp: the camera's own, or its sensor's diagonal / 1500. */
int32_t tablerig_blur_limit(const struct TablerigCamera *camera,
                            double *circle_of_confusion_mm,
                            struct TablerigFault *fault);

/**
 * Fills a lens of `size` bytes, sizeof (TablerigLens), with its defaults; what has none becomes
 * TABLERIG_UNSET.
 */
int32_t tablerig_lens_init(struct TablerigLens *lens, uint32_t size);

/**
 * Refuses a lens with a field out of its range, f-numbers the wrong way round, and a closest focus that
 * does not fit the largest magnification; says which in `fault`, which may be null.
 */
int32_t tablerig_lens_check(const struct TablerigLens *lens, struct TablerigFault *fault);

/**
 * The lens focused at a magnification (used sensor width / frame width), 1e-12 to 1e6: where sensor,
 * principal planes and entrance pupil are. By the thick lens's formulas: f (1 + 1/m) to the front principal
 * plane, f (1 + m) behind the rear one, f (1/m + 1/p) to the entrance pupil. Beyond the lens's largest
 * magnification the focal length stays what it is there.
 */
int32_t tablerig_lens_focused(const struct TablerigLens *lens,
                              double magnification,
                              struct TablerigFocusedLens *focused,
                              struct TablerigFault *fault);

/**
 * How wide the lens sees, focused at a magnification, for a frame of this size in the plane through the aim
 * point: 2 atan (size / 2s) from the entrance pupil at distance s.
 */
int32_t tablerig_field_angles(const struct TablerigLens *lens,
                              double magnification,
                              double frame_width_mm,
                              double frame_height_mm,
                              struct TablerigFieldAngles *field_angles,
                              struct TablerigFault *fault);

/**
 * The focal length (unit focusing) that shows a frame of `frame_width_mm` from an entrance pupil
 * `pupil_distance_mm` from the aim point, on a used sensor width: also the lens that reproduces a viewpoint
 * found with the camera in the hand. TABLERIG_STATUS_NO_FOCAL_LENGTH where it would lie outside 1 to
 * 3000 mm.
 */
int32_t tablerig_focal_length_for(double pupil_distance_mm,
                                  double frame_width_mm,
                                  double used_width_mm,
                                  double pupil_ratio,
                                  double *focal_length_mm,
                                  struct TablerigFault *fault);

/**
 * The magnification at which a lens is focused on something `sensor_distance_mm` from the sensor.
 * TABLERIG_STATUS_NO_FOCUS where the lens does not focus so near.
 */
int32_t tablerig_magnification_at(const struct TablerigLens *lens,
                                  double sensor_distance_mm,
                                  double *magnification,
                                  struct TablerigFault *fault);

/**
 * Everything about focus for a lens at a magnification and a subject whose depth along the axis is
 * `subject_depth`. `f_number` counts where `has_f_number` is 1; else the opening is chosen: the next third
 * stop that holds the subject, or the best for a stack. `stack_overlap` is 0 to 0.95; a brief's default
 * is 0.3. The limit of blur is the camera's.
 */
int32_t tablerig_focus(const struct TablerigCamera *camera,
                       const struct TablerigLens *lens,
                       double magnification,
                       const struct TablerigSubjectDepth *subject_depth,
                       int32_t has_f_number,
                       double f_number,
                       double stack_overlap,
                       struct TablerigFocus *focus,
                       struct TablerigFault *fault);

/**
 * Depth of field of a lens at a magnification, for an f-number and a limit of blur. Far limit and depth
 * behind are infinite from the hyperfocal distance on.
 */
int32_t tablerig_depth_of_field(const struct TablerigLens *lens,
                                double magnification,
                                double f_number,
                                double circle_of_confusion_mm,
                                struct TablerigDepthOfField *depth_of_field,
                                struct TablerigFault *fault);

/**
 * The f-number that just holds what lies from `nearest_mm` in front of the aim point (negative: behind it)
 * to `farthest_mm` behind it; 0 where neither needs any, infinite where the nearest reaches the entrance
 * pupil.
 */
int32_t tablerig_f_number_to_hold(const struct TablerigLens *lens,
                                  double magnification,
                                  double nearest_mm,
                                  double farthest_mm,
                                  double circle_of_confusion_mm,
                                  double *f_number,
                                  struct TablerigFault *fault);

/**
 * How many pictures a focus stack needs at an f-number, and how far its planes of focus lie apart.
 * TABLERIG_STATUS_NO_STACK where the subject reaches the lens.
 */
int32_t tablerig_focus_stack(const struct TablerigCamera *camera,
                             const struct TablerigLens *lens,
                             double magnification,
                             const struct TablerigSubjectDepth *subject_depth,
                             double f_number,
                             double stack_overlap,
                             struct TablerigFocusStack *stack,
                             struct TablerigFault *fault);

/** The smallest third stop at or above an f-number of 0.5 to 512: 7.06 gives the one engraved 7.1. */
int32_t tablerig_third_stop_up(double f_number,
                               struct TablerigThirdStop *third_stop,
                               struct TablerigFault *fault);

/** The largest third stop at or under an f-number of 0.5 to 512: 7.06 gives the one engraved 6.3. */
int32_t tablerig_third_stop_down(double f_number,
                                 struct TablerigThirdStop *third_stop,
                                 struct TablerigFault *fault);

/**
 * Diameter of the blur on the sensor of a point `distance_mm` from the entrance pupil along the axis, for a
 * lens focused at a magnification: (f / N) m |x - s| / x.
 */
int32_t tablerig_blur(const struct TablerigLens *lens,
                      double magnification,
                      double f_number,
                      double distance_mm,
                      double *blur_mm,
                      struct TablerigFault *fault);

/** Effective f-number N (1 + m/p) of a lens focused at a magnification. */
int32_t tablerig_effective_f_number(const struct TablerigLens *lens,
                                    double magnification,
                                    double f_number,
                                    double *effective_f_number,
                                    struct TablerigFault *fault);

/** Light lost to the extension of a lens focused at a magnification, 2 log2 (1 + m/p) stops. */
int32_t tablerig_exposure_loss(const struct TablerigLens *lens,
                               double magnification,
                               double *exposure_loss_stops,
                               struct TablerigFault *fault);

/** Diameter of the diffraction disc on the sensor at an f-number, 2.44 x 550 nm x N (1 + m/p). */
int32_t tablerig_diffraction_disc(const struct TablerigLens *lens,
                                  double magnification,
                                  double f_number,
                                  double *diffraction_disc_mm,
                                  struct TablerigFault *fault);

/** The f-number at which the diffraction disc is as large as a limit of blur. */
int32_t tablerig_diffraction_limit(const struct TablerigLens *lens,
                                   double magnification,
                                   double circle_of_confusion_mm,
                                   double *diffraction_limit_f_number,
                                   struct TablerigFault *fault);

/**
 * The tilt that lays the plane of focus on the table, for a lens focused at a magnification on an aim point
 * `aim_height_mm` above the table, from an elevation. By the hinge rule, tilt = asin (f / J).
 */
int32_t tablerig_tilt_onto_table(const struct TablerigLens *lens,
                                 double magnification,
                                 double aim_height_mm,
                                 double elevation_deg,
                                 struct TablerigTilt *tilt,
                                 struct TablerigFault *fault);

/**
 * Fills a table of `size` bytes, sizeof (TablerigTable), with its defaults; what has none becomes
 * TABLERIG_UNSET.
 */
int32_t tablerig_table_init(struct TablerigTable *table, uint32_t size);

/** Refuses a table with a field out of its range, and says which in `fault`, which may be null. */
int32_t tablerig_table_check(const struct TablerigTable *table, struct TablerigFault *fault);

/**
 * Fills a subject of `size` bytes, sizeof (TablerigSubject), with its defaults; what has none becomes
 * TABLERIG_UNSET.
 */
int32_t tablerig_subject_init(struct TablerigSubject *subject, uint32_t size);

/**
 * Refuses a subject with a field out of its range, contents under the vessel's foot and a vessel wider
 * inside than outside; says which in `fault`, which may be null.
 */
int32_t tablerig_subject_check(const struct TablerigSubject *subject, struct TablerigFault *fault);

/**
 * Fills a bay of `size` bytes, sizeof (TablerigBay), with its defaults: no walls, no ceiling, a level floor,
 * nobody passing.
 */
int32_t tablerig_bay_init(struct TablerigBay *bay, uint32_t size);

/** Refuses a bay with a field out of its range, and says which in `fault`, which may be null. */
int32_t tablerig_bay_check(const struct TablerigBay *bay, struct TablerigFault *fault);

/**
 * Where the camera is for a lens focused at a magnification on the aim point, seen from an elevation (-60
 * to 90) and a bearing, its head's pivot `pivot_below_socket_mm` below the socket.
 */
int32_t tablerig_pose(const struct TablerigCamera *camera,
                      const struct TablerigLens *lens,
                      const struct TablerigTable *table,
                      double magnification,
                      double elevation_deg,
                      double bearing_deg,
                      const struct TablerigPoint *aim,
                      double pivot_below_socket_mm,
                      struct TablerigPose *pose,
                      struct TablerigFault *fault);

/**
 * Where a place in the room appears in the picture. TABLERIG_STATUS_BEHIND_CAMERA at or behind the entrance
 * pupil's plane. It may lie outside the frame.
 */
int32_t tablerig_project(const struct TablerigView *view,
                         const struct TablerigPoint *place,
                         struct TablerigPicturePoint *picture,
                         struct TablerigFault *fault);

/** Distance along the axis from the entrance pupil to a place; negative behind the camera. */
int32_t tablerig_depth(const struct TablerigView *view,
                       const struct TablerigPoint *place,
                       double *depth_mm,
                       struct TablerigFault *fault);

/**
 * Where the line of sight through a place in the picture meets the level plane `z_mm` above the floor.
 * TABLERIG_STATUS_NOT_MET where it runs level or away from it, or the entrance pupil lies in it.
 */
int32_t tablerig_cast_onto_level(const struct TablerigView *view,
                                 const struct TablerigPicturePoint *picture,
                                 double z_mm,
                                 struct TablerigPoint *place,
                                 struct TablerigFault *fault);

/**
 * Share of the picture, 0 to 1, that a flat convex shape of four corners in the room covers, were nothing
 * before it. The corners go around it; `corners` is an array of four.
 */
int32_t tablerig_covered_share(const struct TablerigView *view,
                               const struct TablerigPoint *corners,
                               double *share,
                               struct TablerigFault *fault);

/**
 * Length of the part of a straight line between two places that lies inside the frame and in front of the
 * entrance pupil; 0 where none does.
 */
int32_t tablerig_length_in_frame(const struct TablerigView *view,
                                 const struct TablerigPoint *from,
                                 const struct TablerigPoint *to,
                                 double *length_mm,
                                 struct TablerigFault *fault);

/**
 * The frame cast from the entrance pupil onto the table's plane. `bearing_deg` is only handed on to the
 * board.
 */
int32_t tablerig_footprint(const struct TablerigView *view,
                           const struct TablerigTable *table,
                           double bearing_deg,
                           struct TablerigFootprint *footprint,
                           struct TablerigFault *fault);

/** The backdrop that fills the frame behind the table, 1 to 20000 mm behind the aim point. */
int32_t tablerig_backdrop(const struct TablerigView *view,
                          const struct TablerigTable *table,
                          double behind_mm,
                          struct TablerigBackdrop *backdrop,
                          struct TablerigFault *fault);

/**
 * The subject's extent along the axis, seen from an elevation and a bearing; it stands centred under the
 * aim point, which is `aim_height_mm` above its foot.
 */
int32_t tablerig_subject_depth(const struct TablerigSubject *subject,
                               double aim_height_mm,
                               double elevation_deg,
                               double bearing_deg,
                               struct TablerigSubjectDepth *subject_depth,
                               struct TablerigFault *fault);

/**
 * The subject's outline in a frame of this size, drawn from an entrance pupil `pupil_distance_mm` from the
 * aim point. TABLERIG_STATUS_BEHIND_CAMERA where it reaches the entrance pupil's plane.
 */
int32_t tablerig_outline(const struct TablerigSubject *subject,
                         double aim_height_mm,
                         double elevation_deg,
                         double bearing_deg,
                         double pupil_distance_mm,
                         double frame_width_mm,
                         double frame_height_mm,
                         struct TablerigOutline *outline,
                         struct TablerigFault *fault);

/**
 * What shows of the subject's top, side and contents, from an entrance pupil `pupil_distance_mm` from the
 * aim point.
 */
int32_t tablerig_shares(const struct TablerigSubject *subject,
                        double aim_height_mm,
                        double elevation_deg,
                        double bearing_deg,
                        double pupil_distance_mm,
                        struct TablerigShares *shares,
                        struct TablerigFault *fault);

/**
 * The frame width at which the subject fills the wanted share, 0.01 to 1, of the frame's width or height;
 * `fill` is a TablerigFill. TABLERIG_STATUS_NO_FRAME_WIDTH where none of 1 to 100000 mm does.
 */
int32_t tablerig_frame_width_for_fill(int32_t fill,
                                      double share,
                                      const struct TablerigLens *lens,
                                      const struct TablerigUsedArea *used,
                                      const struct TablerigSubject *subject,
                                      double aim_height_mm,
                                      double elevation_deg,
                                      double bearing_deg,
                                      double *frame_width_mm,
                                      struct TablerigFault *fault);

/**
 * The largest frame width that keeps camera and pivot under a ceiling, from which its clearance has already
 * been taken off; infinite where the camera fits at any distance, level or looking up. A boom that rises
 * behind the camera, or its tail, may be higher still: a plan checks those.
 * TABLERIG_STATUS_NO_ROOM_UNDER_CEILING where the camera does not fit even at its closest focus.
 */
int32_t tablerig_largest_frame_width(double ceiling_mm,
                                     double aim_height_above_floor_mm,
                                     double elevation_deg,
                                     const struct TablerigCamera *camera,
                                     const struct TablerigLens *lens,
                                     const struct TablerigUsedArea *used,
                                     double pivot_below_socket_mm,
                                     double *frame_width_mm,
                                     struct TablerigFault *fault);

/**
 * Perspective of a frame of this size seen from an entrance pupil `pupil_distance_mm` from the aim point,
 * and of a subject under it.
 */
int32_t tablerig_perspective(const struct TablerigSubject *subject,
                             double aim_height_mm,
                             double elevation_deg,
                             double bearing_deg,
                             double pupil_distance_mm,
                             double frame_width_mm,
                             double frame_height_mm,
                             struct TablerigPerspective *perspective,
                             struct TablerigFault *fault);

/**
 * The corner stretch of a 60 mm lens on 36 x 24 mm: under it, a straight-on picture does not show stretch,
 * whatever the sensor (common practice, no source).
 */
double tablerig_straight_on_stretch_limit(void);

/**
 * Fills a support of `size` bytes, sizeof (TablerigSupport), with its defaults, those of its head and boom
 * too; there is no boom until `has_boom` is set to 1. What has no default becomes TABLERIG_UNSET.
 */
int32_t tablerig_support_init(struct TablerigSupport *support, uint32_t size);

/**
 * Refuses a support with a field out of its range, a highest position under the lowest, feet inside the
 * column, a counterweight beyond the tail and a tube without a wall; says which in `fault`, which may be
 * null.
 */
int32_t tablerig_support_check(const struct TablerigSupport *support, struct TablerigFault *fault);

/**
 * Where the support stands to carry a pivot, and how far its boom goes. A pivot that lies outside the table
 * by the stand-off needs no boom; otherwise the boom reaches square over an edge, that of the shortest reach,
 * or over `side` (a TablerigSide) where `has_side` is 1. A support without a boom is placed as if one reached
 * over. `body_top_mm` is the highest point of camera and lens.
 */
int32_t tablerig_placement(const struct TablerigSupport *support,
                           const struct TablerigTable *table,
                           const struct TablerigPoint *pivot,
                           double body_top_mm,
                           int32_t has_side,
                           int32_t side,
                           struct TablerigPlacement *placement,
                           struct TablerigFault *fault);

/** What the bay leaves around a placed camera and rig; infinite where there is no wall or ceiling. */
int32_t tablerig_bay_room(const struct TablerigBay *bay,
                          const struct TablerigTable *table,
                          const struct TablerigView *view,
                          const struct TablerigPlacement *placement,
                          double body_behind_mm,
                          struct TablerigBayRoom *bay_room,
                          struct TablerigFault *fault);

/** How much of column and boom lies inside the frame. */
int32_t tablerig_support_in_picture(const struct TablerigView *view,
                                    const struct TablerigTable *table,
                                    const struct TablerigSupport *support,
                                    const struct TablerigPlacement *placement,
                                    struct TablerigSupportInPicture *support_in_picture,
                                    struct TablerigFault *fault);

/**
 * Camera, lens and head as one weight for a camera's pose; the head is taken to hang on the axis at the
 * socket.
 */
int32_t tablerig_payload(const struct TablerigCamera *camera,
                         const struct TablerigLens *lens,
                         double head_mass_kg,
                         const struct TablerigPose *pose,
                         struct TablerigPayload *payload,
                         struct TablerigFault *fault);

/** The weights of a placed rig in its own coordinates. */
int32_t tablerig_loads(const struct TablerigSupport *support,
                       const struct TablerigPlacement *placement,
                       const struct TablerigPayload *payload,
                       struct TablerigLoads *loads,
                       struct TablerigFault *fault);

/**
 * The polygon of `leg_count` feet, 3 to 8, evenly spaced on a circle, the first leg in a direction
 * counter-clockwise from the boom's.
 */
int32_t tablerig_feet(uint32_t leg_count,
                      double foot_radius_mm,
                      double first_leg_deg,
                      struct TablerigFeet *feet,
                      struct TablerigFault *fault);

/**
 * How the rig stands with the weights of one state on (a TablerigRigState), a push being taken
 * `push_height_mm` above the floor. The usual cautions for loads above tables and people go with it.
 */
int32_t tablerig_standing(const struct TablerigFeet *feet,
                          const struct TablerigLoads *loads,
                          int32_t rig_state,
                          const struct TablerigPlacement *placement,
                          double push_height_mm,
                          struct TablerigStanding *standing,
                          struct TablerigFault *fault);

/**
 * How a placed rig stands in its three states, a push being taken at the pivot, and the payload against the
 * one that would tip it. The usual cautions for loads above tables and people go with it.
 */
int32_t tablerig_stability(const struct TablerigFeet *feet,
                           const struct TablerigLoads *loads,
                           const struct TablerigPlacement *placement,
                           double pivot_height_mm,
                           struct TablerigStability *stability,
                           struct TablerigFault *fault);

/**
 * Everything solved for, for a placed rig, from a placement's `boom_used` and `reach_mm`. The wanted factor
 * and the states in which the base weight keeps it are those of `criteria`, which may be null for the
 * documented defaults.
 */
int32_t tablerig_ballast(const struct TablerigFeet *feet,
                         const struct TablerigLoads *loads,
                         const struct TablerigSupport *support,
                         int32_t boom_used,
                         double reach_mm,
                         const struct TablerigCriteria *criteria,
                         struct TablerigBallast *ballast,
                         struct TablerigFault *fault);

/**
 * Sag of a boom, `boom_length_mm` from clamp to pivot, as a cantilever under a payload, for a camera whose
 * sensor is `sensor_distance_mm` from the aim point. TABLERIG_STATUS_NO_STIFFNESS where the boom's stiffness
 * is unknown.
 */
int32_t tablerig_sag(const struct TablerigBoom *boom,
                     double boom_length_mm,
                     double payload_kg,
                     double sensor_distance_mm,
                     double settled_share,
                     struct TablerigSag *sag,
                     struct TablerigFault *fault);

/**
 * Advice on elevation for a subject seen from a bearing (the ranges are common practice, no source; the
 * start within them is computed from what would show).
 */
int32_t tablerig_advice(const struct TablerigSubject *subject,
                        double bearing_deg,
                        struct TablerigAdvice *advice,
                        struct TablerigFault *fault);

/** The lowest elevation from which a share, 0 to 1, of a vessel's contents shows, from far off. */
int32_t tablerig_elevation_for_contents(const struct TablerigVessel *vessel,
                                        double share,
                                        double *elevation_deg,
                                        struct TablerigFault *fault);

/** One sentence for a TablerigAdviceReason. Never null: for any other number a sentence that says so. */
const char *tablerig_advice_reason_text(int32_t reason);

/** Fills what was measured, of `size` bytes, sizeof (TablerigMeasured), with TABLERIG_UNSET. */
int32_t tablerig_measured_init(struct TablerigMeasured *measured, uint32_t size);

/**
 * How exactly a planned camera must be set: a lens focused at a magnification, from an elevation, for a
 * frame width and the tolerances of a shot. Infinite where no move in a direction leaves them.
 */
int32_t tablerig_tolerance(const struct TablerigLens *lens,
                           double magnification,
                           double elevation_deg,
                           double frame_width_mm,
                           double elevation_tolerance_deg,
                           double frame_width_tolerance,
                           double roll_tolerance_deg,
                           struct TablerigTolerance *tolerance,
                           struct TablerigFault *fault);

/**
 * Elevation and frame width, with their uncertainties, from what was measured, for a lens focused on the aim
 * point. TABLERIG_STATUS_NO_VIEWPOINT where the sensor was measured at the aim point itself or the heights
 * further apart than the tape; TABLERIG_STATUS_NO_FOCUS where the lens does not focus so near.
 */
int32_t tablerig_real_shot(const struct TablerigMeasured *measured,
                           const struct TablerigLens *lens,
                           double used_width_mm,
                           struct TablerigRealShot *real_shot,
                           struct TablerigFault *fault);

/**
 * One sentence for a TablerigCautionCode, without the numbers. Never null: for any other number a sentence
 * that says so.
 */
const char *tablerig_caution_text(int32_t code);

/**
 * The unit of value and limit of a TablerigCautionCode: "mm", "deg", "kg", "n", "n_m", "percent", or ""
 * for a pure number. Never null.
 */
const char *tablerig_caution_unit(int32_t code);

/** One word for a TablerigLevel: "note", "warn" or "stop". Never null. */
const char *tablerig_level_text(int32_t level);

/** In one sentence, how camera and counterweight come off, for a TablerigRemoval. Never null. */
const char *tablerig_removal_text(int32_t removal);

/**
 * The cautions that go with every load above a table or a person, beginning with index 0: print all of
 * them beside the numbers of a plan whose `overhead` is 1. Null past the last.
 */
const char *tablerig_overhead_caution(uint32_t index);

/**
 * Fills a shot of `size` bytes, sizeof (TablerigShot), with its defaults; what has none becomes
 * TABLERIG_UNSET.
 */
int32_t tablerig_shot_init(struct TablerigShot *shot, uint32_t size);

/** Refuses a shot with a field out of its range, and says which in `fault`, which may be null. */
int32_t tablerig_shot_check(const struct TablerigShot *shot, struct TablerigFault *fault);

/** Fills criteria of `size` bytes, sizeof (TablerigCriteria), with their defaults. */
int32_t tablerig_criteria_init(struct TablerigCriteria *criteria, uint32_t size);

/** Refuses criteria with a field out of its range, and says which in `fault`, which may be null. */
int32_t tablerig_criteria_check(const struct TablerigCriteria *criteria, struct TablerigFault *fault);

/** Fills a brief of `size` bytes, sizeof (TablerigBrief), with null pointers. */
int32_t tablerig_brief_init(struct TablerigBrief *brief, uint32_t size);

/**
 * Refuses a brief whose planning would be refused for one of its fields, and says which in `fault`, which
 * may be null; does not look for a frame width.
 */
int32_t tablerig_brief_check(const struct TablerigBrief *brief, struct TablerigFault *fault);

/** Fills a plan of `size` bytes, sizeof (TablerigPlan), with zeros but for its size. */
int32_t tablerig_plan_init(struct TablerigPlan *plan, uint32_t size);

/**
 * Plans a shot. A brief that cannot be met (too near to focus, ceiling too low, boom too short, it would tip)
 * is not an error: the plan comes back complete, with cautions. Refused: a field that is not finite or out of
 * its range, the first in the order shot, camera, lens, table, subject, support, bay, criteria; fields that
 * contradict each other; and a share of the frame that no frame width gives.
 */
int32_t tablerig_plan(const struct TablerigBrief *brief,
                      struct TablerigPlan *plan,
                      struct TablerigFault *fault);

/**
 * Plans many shots. `briefs` and `plans` are arrays of `count` elements, each `brief_stride` or
 * `plan_stride` bytes after the one before (sizeof (TablerigBrief) and sizeof (TablerigPlan) for plain
 * arrays); every element has its own size set. `statuses` is an array of `count`, and so is `faults` unless it
 * is null. Returns TABLERIG_STATUS_OK when each shot has been gone through: its element of `statuses` then says
 * how it went, and where it was refused, its plan is untouched and its fault says why. Any other status:
 * nothing was done. Several threads may each plan their own stretch of the same arrays.
 */
int32_t tablerig_plan_batch(const struct TablerigBrief *briefs,
                            size_t brief_stride,
                            struct TablerigPlan *plans,
                            size_t plan_stride,
                            size_t count,
                            int32_t *statuses,
                            struct TablerigFault *faults);

/** How many rows the table of ranges has; later versions may have more. */
uint32_t tablerig_range_count(void);

/** One row of the table of ranges, by its index from 0. TABLERIG_STATUS_UNKNOWN_CODE past the last. */
int32_t tablerig_range_at(uint32_t index, struct TablerigRange *range, struct TablerigFault *fault);

/**
 * One phrase for a TablerigStatus, to be read after a fault's field: "lens.focal_length_mm" "is too small".
 * Never null: for any other number a phrase that says so.
 */
const char *tablerig_status_text(int32_t status);

#ifdef __cplusplus
}  // extern "C"
#endif  // __cplusplus

#endif  /* TABLERIG_H */
