/* A shot, its brief and its plan: structs of include/tablerig.h, which describes the fields. */
package tablerig;

import com.sun.jna.Pointer;
import com.sun.jna.Structure.FieldOrder;

public final class Planned {
    private Planned() {}

    @FieldOrder({
        "size", "framing", "hold", "focus_on_table", "has_delivered_aspect", "has_aim_height_mm",
        "has_f_number", "has_backdrop_behind_mm", "has_side", "side", "elevation_deg", "frame_width_mm",
        "fill_width", "fill_height", "bearing_deg", "aim_x_mm", "aim_y_mm", "aim_height_mm", "f_number",
        "backdrop_behind_mm", "light_clearance_mm", "stack_overlap", "elevation_tolerance_deg",
        "frame_width_tolerance", "roll_tolerance_deg", "delivered_aspect"
    })
    public static class Shot extends Struct {
        public int size, framing, hold, focus_on_table, has_delivered_aspect, has_aim_height_mm, has_f_number,
            has_backdrop_behind_mm, has_side, side;
        public double elevation_deg, frame_width_mm, fill_width, fill_height, bearing_deg, aim_x_mm, aim_y_mm,
            aim_height_mm, f_number, backdrop_behind_mm, light_clearance_mm, stack_overlap,
            elevation_tolerance_deg, frame_width_tolerance, roll_tolerance_deg;
        public Optics.Aspect delivered_aspect;
    }

    @FieldOrder({
        "size", "hold_as_shot", "hold_camera_off", "hold_counterweight_off", "payload_share_note",
        "payload_share_warn", "payload_share_stop", "factor_note", "factor_warn", "factor_stop",
        "springy_frequency_hz", "springy_factor_warn", "tilt_warn_deg", "tilt_stop_deg",
        "tilt_public_warn_deg", "push_share_warn", "push_most_n", "push_height_most_mm",
        "people_rating_divisor", "wanted_factor", "settled_share"
    })
    public static class Criteria extends Struct {
        public int size, hold_as_shot, hold_camera_off, hold_counterweight_off;
        public double payload_share_note, payload_share_warn, payload_share_stop, factor_note, factor_warn,
            factor_stop, springy_frequency_hz, springy_factor_warn, tilt_warn_deg, tilt_stop_deg,
            tilt_public_warn_deg, push_share_warn, push_most_n, push_height_most_mm, people_rating_divisor,
            wanted_factor, settled_share;
    }

    @FieldOrder({"size", "reserved", "shot", "camera", "lens", "table", "subject", "support", "bay", "criteria"})
    public static class Brief extends Struct {
        public int size, reserved;
        public Pointer shot, camera, lens, table, subject, support, bay, criteria;
    }

    @FieldOrder({
        "reasons", "has_contents_at_start", "has_half_contents_from_deg", "reserved", "least_deg",
        "most_deg", "start_deg", "top_share_at_start", "contents_at_start", "half_top_from_deg",
        "half_contents_from_deg"
    })
    public static class Advice extends Struct {
        public int[] reasons = new int[3];
        public int has_contents_at_start, has_half_contents_from_deg, reserved;
        public double least_deg, most_deg, start_deg, top_share_at_start, contents_at_start,
            half_top_from_deg, half_contents_from_deg;
    }

    @FieldOrder({"up_mm", "down_mm", "away_mm", "closer_mm", "roll_drift_mm"})
    public static class Tolerance extends Struct {
        public double up_mm, down_mm, away_mm, closer_mm, roll_drift_mm;
    }

    @FieldOrder({"code", "level", "value", "limit"})
    public static class Caution extends Struct {
        public int code, level;
        public double value, limit;
    }

    @FieldOrder({
        "size", "overhead", "removal", "caution_count", "has_backdrop", "has_outline", "has_sag",
        "reserved", "frame_width_mm", "frame_height_mm", "aim_height_mm", "used_area", "lens",
        "field_angles", "pose", "footprint", "backdrop", "subject_depth", "outline", "shares", "focus",
        "tilt", "perspective", "advice", "payload", "placement", "bay_room", "support_in_picture",
        "stability", "ballast", "sag", "tolerance", "cautions"
    })
    public static class Plan extends Struct {
        public int size, overhead, removal, caution_count, has_backdrop, has_outline, has_sag, reserved;
        public double frame_width_mm, frame_height_mm, aim_height_mm;
        public Optics.UsedArea used_area;
        public Optics.FocusedLens lens;
        public Optics.FieldAngles field_angles;
        public Picture.Pose pose;
        public Picture.Footprint footprint;
        public Picture.Backdrop backdrop;
        public Optics.SubjectDepth subject_depth;
        public Picture.Outline outline;
        public Picture.Shares shares;
        public Optics.Focus focus;
        public Optics.Tilt tilt;
        public Picture.Perspective perspective;
        public Advice advice;
        public Rig.Payload payload;
        public Rig.Placement placement;
        public Rig.BayRoom bay_room;
        public Rig.SupportInPicture support_in_picture;
        public Standing.Stability stability;
        public Standing.Ballast ballast;
        public Standing.Sag sag;
        public Tolerance tolerance;
        public Caution[] cautions = (Caution[]) new Caution().toArray(64);
    }

    @FieldOrder({"status", "reserved", "value", "least", "most", "field"})
    public static class Fault extends Struct {
        public int status, reserved;
        public double value, least, most;
        public String field;
    }
}
