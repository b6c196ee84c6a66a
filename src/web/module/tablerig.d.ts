// The types of tablerig.mjs: generated from the library's own; not to be edited.

/** What JSON has no number for. */
export type Infinite = "infinite" | "-infinite";

/** A number in the unit that its key ends in, or a text with its own unit: `600`, `"60 cm"`, `"7 ft 10 in"`. */
export type Quantity = number | string;

/** A quantity alone, with its uncertainty as a text such as `"213.5 cm ± 5 mm"`, or both apart. */
export type MeasuredQuantity = Quantity | { value: Quantity; uncertainty?: Quantity };

/** A change to a shoot file: the way to a value through keys and places counted from 0, and what is to be there. */
export interface Edit {
  path: (string | number)[];
  /** `null` takes it away. */
  value: unknown;
}

/** A place in the room. */
export interface PointEntry {
  x_mm: Quantity;
  y_mm: Quantity;
  z_mm: Quantity;
}

/** A place in the picture, from its centre. */
export interface PicturePointEntry {
  right_mm: Quantity;
  up_mm: Quantity;
}

/** Pieces of one weight. */
export interface PieceSizeEntry {
  mass_kg: Quantity;
  at_hand?: number;
}

/** `[shoot]` of a shoot file. */
export interface ShootEntry {
  /** what the shoot is called. Left out: none. */
  title?: string;
  /** printed under the title. Left out: none. */
  note?: string;
  /** for shots that name none. Left out: each shot names its own, if there are several. */
  camera?: string;
  /** for shots that name none. Left out: each shot names its own, if there are several. */
  lens?: string;
  /** for shots that name none. Left out: each shot names its own, if there are several. */
  table?: string;
  /** for shots that name none. Left out: each shot names its own, if there are several. */
  subject?: string;
  /** for shots that name none. Left out: each shot names its own, if there are several. */
  support?: string;
  /** for shots that name none. Left out: each shot names its own, if there are several. */
  bay?: string;
}

/** `[camera.NAME]` of a shoot file. */
export interface CameraEntry {
  /** the sensor's longer side, held across; 1 to 500 mm */
  sensor_width_mm: Quantity;
  /** the sensor's shorter side, held across; 1 to 500 mm */
  sensor_height_mm: Quantity;
  /** largest blur on the sensor that counts as sharp; the sensor's diagonal / 1500 when left out; 0.0001 to 5 mm. Left out: the sensor's diagonal / 1500. */
  circle_of_confusion_mm?: Quantity;
  /** the mounting socket ahead of the sensor, along the axis; -500 to 2000 mm */
  socket_ahead_mm: Quantity;
  /** the mounting socket below the axis, square to it; -500 to 1000 mm */
  socket_below_mm: Quantity;
  /** the body's top above the axis, square to it; 0 to 1000 mm */
  body_above_mm: Quantity;
  /** the body's back behind the sensor; 0 to 1000 mm. Left out: 0. */
  body_behind_mm?: Quantity;
  /** the camera without its lens; 0 to 100 kg */
  mass_kg: Quantity;
  /** the camera's centre of gravity ahead of the sensor, on the axis; -1000 to 2000 mm. Left out: 0, at the sensor. */
  centre_ahead_mm?: Quantity;
  /** for whoever reads the file. Left out: none. */
  note?: string;
}

/** `[lens.NAME]` of a shoot file. */
export interface LensEntry {
  /** the marked focal length, for infinity; 1 to 3000 mm */
  focal_length_mm: Quantity;
  /** sensor to object, as lenses are specified; 1 to 100000 mm. Left out: no limit but the lens formula's. */
  closest_focus_mm?: Quantity;
  /** at the closest focus; 0.0001 to 20. Left out: the focal length stays as marked. */
  largest_magnification?: Quantity;
  /** exit pupil / entrance pupil; 1 when left out; 0.05 to 20. Left out: 1. */
  pupil_ratio?: Quantity;
  /** from the front to the rear principal plane; 0 when left out; -1000 to 1000 mm. Left out: 0. */
  principal_separation_mm?: Quantity;
  /** the widest opening's engraved f-number; 0.5 to 512 */
  least_f_number: Quantity;
  /** the smallest opening's engraved f-number; 0.5 to 512 */
  most_f_number: Quantity;
  /** the lens's front ahead of the sensor; 1 to 5000 mm. Left out: room for the light is not checked. */
  front_from_sensor_mm?: Quantity;
  /** how far a tilting lens tilts; 0 for any other; 0 to 45 deg. Left out: 0. */
  largest_tilt_deg?: Quantity;
  /** the lens; 0 to 100 kg */
  mass_kg: Quantity;
  /** the lens's centre of gravity ahead of the sensor, on the axis; -1000 to 5000 mm */
  centre_ahead_mm: Quantity;
  /** for whoever reads the file. Left out: none. */
  note?: string;
}

/** `[table.NAME]` of a shoot file. */
export interface TableEntry {
  /** the table top along its front edge; 1 to 20000 mm */
  width_mm: Quantity;
  /** the table top from its front edge to its back edge; 1 to 20000 mm */
  depth_mm: Quantity;
  /** the table top above the floor; 0 to 3000 mm */
  height_mm: Quantity;
  /** open: a stand's feet pass under the top; closed: a plinth or a cabinet keeps them outside. Left out: open. */
  underside?: "open" | "closed";
  /** for whoever reads the file. Left out: none. */
  note?: string;
}

/** `[subject.NAME]` of a shoot file. */
export interface SubjectEntry {
  /** along the table's width; 0.1 to 10000 mm. One of: a box has width_mm and depth_mm, a round one diameter_mm. */
  width_mm?: Quantity;
  /** along the table's depth; 0.1 to 10000 mm. One of: a box has width_mm and depth_mm, a round one diameter_mm. */
  depth_mm?: Quantity;
  /** of a round subject; 0.1 to 10000 mm. One of: a box has width_mm and depth_mm, a round one diameter_mm. */
  diameter_mm?: Quantity;
  /** above the table top; 0 to 5000 mm */
  height_mm: Quantity;
  /** what the picture lives by, for the advice on elevation. Left out: form. */
  judged_by?: "form" | "top_detail" | "side_layers" | "contents" | "clear_layers" | "decorated_glass" | "laid_table";
  /** a round opening at the subject's height, with contents below the rim. Left out: no vessel. */
  vessel?: VesselEntry;
  /** for whoever reads the file. Left out: none. */
  note?: string;
}

/** `[subject.NAME.vessel]` of a shoot file. */
export interface VesselEntry {
  /** the vessel's opening; no wider than the subject; 0.1 to 10000 mm */
  inside_diameter_mm: Quantity;
  /** from the rim, which is at the subject's height, down to the contents; 0 to 5000 mm */
  contents_below_rim_mm: Quantity;
}

/** `[support.NAME]` of a shoot file. */
export interface SupportEntry {
  /** the lowest the column carries the head's pivot, or the boom's clamp; 0 to 20000 mm */
  lowest_pivot_mm: Quantity;
  /** the highest the column carries the head's pivot, or the boom's clamp; 0 to 20000 mm */
  highest_pivot_mm: Quantity;
  /** half the column's thickness; 0 to 1000 mm */
  column_radius_mm: Quantity;
  /** feet, evenly spaced on a circle; fewer than three do not stand; 3 to 8 */
  leg_count: number;
  /** radius of the circle on which the feet stand; 1 to 5000 mm */
  foot_radius_mm: Quantity;
  /** the height at which the legs meet the column; 1 to 20000 mm */
  legs_top_mm: Quantity;
  /** the first leg's direction, counter-clockwise from the boom's; when left out 0 with a boom (a leg under the load), and without one half a leg spacing (the gap faces the table); -360 to 360 deg. Left out: a leg under the boom; without one the gap faces the table. */
  first_leg_deg?: Quantity;
  /** room kept between the stand and the table; 0 to 2000 mm. Left out: 0. */
  table_clearance_mm?: Quantity;
  /** column and legs; 0 to 500 kg */
  mass_kg: Quantity;
  /** centre of gravity of column and legs above the floor, on the column's axis; 0 to 20000 mm */
  centre_height_mm: Quantity;
  /** weight added to the base, on the column's axis; 0 to 1000 kg. Left out: 0. */
  base_mass_kg?: Quantity;
  /** that weight's height above the floor; 0 to 20000 mm. Left out: 0, on the floor. */
  base_height_mm?: Quantity;
  /** the maker's rating of what the column may carry in all; 0 to 1000 kg. Left out: not checked. */
  rated_load_kg?: Quantity;
  /** the head between boom or column and camera */
  head: HeadEntry;
  /** a boom across the column. Left out: no boom. */
  boom?: BoomEntry;
  /** up to four bags where they hang, as a list of tables. Left out: no bags. */
  sandbags?: SandbagEntry[];
  /** for whoever reads the file. Left out: none. */
  note?: string;
}

/** `[support.NAME.head]` of a shoot file. */
export interface HeadEntry {
  /** the head, taken to hang on the axis at the socket; 0 to 100 kg */
  mass_kg: Quantity;
  /** from the socket to the head's pivot, square to the axis; -500 to 1000 mm */
  pivot_below_socket_mm: Quantity;
  /** the maker's rating; 0 to 1000 kg. Left out: not checked. */
  rated_load_kg?: Quantity;
  /** the maker's rating; 0 to 10000 N m. Left out: not checked. */
  rated_moment_n_m?: Quantity;
}

/** `[support.NAME.boom]` of a shoot file. */
export interface BoomEntry {
  /** horizontally, from the column's axis to the head's pivot; 1 to 10000 mm */
  longest_reach_mm: Quantity;
  /** the boom's length behind the clamp; 0 to 10000 mm */
  tail_mm: Quantity;
  /** from the tail's end to the head, its centre of gravity at mid-length; 0 to 200 kg */
  mass_kg: Quantity;
  /** how far the boom rises towards the camera; -60 to 60 deg. Left out: 0, level. */
  pitch_deg?: Quantity;
  /** on the tail; 0 to 500 kg. Left out: 0. */
  counterweight_kg?: Quantity;
  /** along the tail from the clamp; the tail's end when left out; 0 to 10000 mm. Left out: the tail's end. */
  counterweight_out_mm?: Quantity;
  /** how stiff the boom is in bending. Left out: no sag and no swing computed. */
  stiffness?: StiffnessEntry;
  /** share of critical damping with which the boom's swing dies down; 0.0001 to 0.99. Left out: no waiting time computed. */
  damping_ratio?: Quantity;
  /** the maker's rating of the load at full reach; 0 to 1000 kg. Left out: not checked. */
  rated_load_kg?: Quantity;
  /** the maker's rating of what the clamp may hold unbalanced; 0 to 100000 N m. Left out: not checked. */
  rated_clamp_moment_n_m?: Quantity;
}

/** `[support.NAME.boom.stiffness]` of a shoot file. */
export interface StiffnessEntry {
  /** EI of the boom's section; 0.001 to 1000000000000 N m2. One of: give bending_stiffness_n_m2, or tube_outside_mm, tube_inside_mm and tube_modulus_n_per_mm2. */
  bending_stiffness_n_m2?: Quantity;
  /** outside diameter of a round tube; 1 to 1000 mm. One of: give bending_stiffness_n_m2, or tube_outside_mm, tube_inside_mm and tube_modulus_n_per_mm2. */
  tube_outside_mm?: Quantity;
  /** inside diameter of the tube; 0 for a solid bar; 0 to 1000 mm. One of: give bending_stiffness_n_m2, or tube_outside_mm, tube_inside_mm and tube_modulus_n_per_mm2. */
  tube_inside_mm?: Quantity;
  /** Young's modulus of the tube: aluminium 69000, steel 207000; 1 to 2000000 N/mm2. One of: give bending_stiffness_n_m2, or tube_outside_mm, tube_inside_mm and tube_modulus_n_per_mm2. */
  tube_modulus_n_per_mm2?: Quantity;
}

/** `[[support.NAME.sandbags]]` of a shoot file. */
export interface SandbagEntry {
  /** one bag, hung clear of the floor; 0 to 200 kg */
  mass_kg: Quantity;
  /** how far from the column's axis it hangs; 0 to 5000 mm */
  out_mm: Quantity;
  /** in which direction it hangs, counter-clockwise from the boom's: 0 under the load, 180 behind; -360 to 360 deg */
  direction_deg: Quantity;
  /** its centre of gravity above the floor; 0 to 20000 mm */
  height_mm: Quantity;
}

/** `[bay.NAME]` of a shoot file. */
export interface BayEntry {
  /** from the table's centre to the wall on the left; 0 to 100000 mm. Left out: no wall. */
  left_mm?: Quantity;
  /** from the table's centre to the wall on the right; 0 to 100000 mm. Left out: no wall. */
  right_mm?: Quantity;
  /** from the table's centre to the wall in front; 0 to 100000 mm. Left out: no wall. */
  front_mm?: Quantity;
  /** from the table's centre to the wall behind; 0 to 100000 mm. Left out: no wall. */
  back_mm?: Quantity;
  /** above the floor; 500 to 100000 mm. Left out: no ceiling. */
  ceiling_mm?: Quantity;
  /** room kept under the ceiling; 0 to 5000 mm. Left out: 0. */
  ceiling_clearance_mm?: Quantity;
  /** room for a person behind the camera; 0 to 10000 mm. Left out: 0. */
  person_room_mm?: Quantity;
  /** the floor's steepest slope, taken off the tilt margin; 0 to 30 %. Left out: 0, level. */
  floor_slope_percent?: Quantity;
  /** whether children or the public pass. Left out: false. */
  public_passes?: boolean;
  /** whether people are under the load; makers' ratings are then divided. Left out: false. */
  people_under?: boolean;
  /** for whoever reads the file. Left out: none. */
  note?: string;
}

/** `[criteria]` of a shoot file. */
export interface CriteriaEntry {
  /** payload over the payload that tips the stand: a note above this; 0 to 10. Left out: 0.667. */
  payload_share_note?: Quantity;
  /** ... a warning above this; 0 to 10. Left out: 0.75. */
  payload_share_warn?: Quantity;
  /** ... a stop from this on; 0 to 10. Left out: 1. */
  payload_share_stop?: Quantity;
  /** restoring over overturning moment: a note under this; 0 to 100. Left out: 2. */
  factor_note?: Quantity;
  /** ... a warning under this; 0 to 100. Left out: 1.5. */
  factor_warn?: Quantity;
  /** ... a stop under this; 0 to 100. Left out: 1. */
  factor_stop?: Quantity;
  /** a boom that swings slower than this is springy; 0 to 1000 Hz. Left out: 3. */
  springy_frequency_hz?: Quantity;
  /** the factor under which a springy boom gets a warning; 0 to 100. Left out: 2. */
  springy_factor_warn?: Quantity;
  /** tilt that tips the stand: a warning under this; 0 to 90 deg. Left out: 10. */
  tilt_warn_deg?: Quantity;
  /** ... a stop under this; 0 to 90 deg. Left out: 5. */
  tilt_stop_deg?: Quantity;
  /** ... a warning under this where children or the public pass; 0 to 90 deg. Left out: 15. */
  tilt_public_warn_deg?: Quantity;
  /** sideways push that tips the stand, as a share of its weight: a warning under this; 0 to 10. Left out: 0.13. */
  push_share_warn?: Quantity;
  /** a push above this is never asked for; 0 to 100000 N. Left out: 250. */
  push_most_n?: Quantity;
  /** the push is taken at the pivot, but no higher than this; 1 to 20000 mm. Left out: 1500. */
  push_height_most_mm?: Quantity;
  /** makers' ratings are divided by this where people are under the load; 1 to 100. Left out: 2. */
  people_rating_divisor?: Quantity;
  /** the factor that the solved base weight and longest reach keep; 1 to 100. Left out: 2. */
  wanted_factor?: Quantity;
  /** whether the solved base weight is to keep the factor as shot. Left out: true. */
  hold_as_shot?: boolean;
  /** ... with the camera off and the counterweight on. Left out: true. */
  hold_camera_off?: boolean;
  /** ... with the counterweight off and the camera on. Left out: false. */
  hold_counterweight_off?: boolean;
  /** a touched boom counts as settled when its swing has died down to this share; 0.000001 to 0.99. Left out: 0.01. */
  settled_share?: Quantity;
}

/** `[kit]` of a shoot file. */
export interface KitEntry {
  /** what shots that name no lens, or "any", choose from. Left out: every lens of the file. */
  lenses?: string | string[];
  /** ... for supports. Left out: every support of the file. */
  supports?: string | string[];
  /** ... for the stand's side. Left out: all four for "any"; a shot that names none has the one of the shortest reach. */
  sides?: string | string[];
}

/** `[weights]` of a shoot file. */
export interface WeightsEntry {
  /** pieces for booms' tails: each shot takes what balances its boom, in place of its support's counterweight_kg. Left out: the support's own. */
  counterweights?: PieceSizeEntry[];
  /** bags or plates for bases: each shot takes what keeps wanted_factor, in place of its support's base_mass_kg. Left out: the support's own. */
  base_weights?: PieceSizeEntry[];
}

/** `[order]` of a shoot file. */
export interface OrderEntry {
  /** what it takes to bring another support, its side and height included; 0 to 1440 min. Left out: 10. */
  support_minutes?: Quantity;
  /** ... to take the same support to another side of the table; 0 to 1440 min. Left out: 6. */
  side_minutes?: Quantity;
  /** ... to change the lens; 0 to 1440 min. Left out: 2. */
  lens_minutes?: Quantity;
  /** ... to take the same support to another height, beyond the threshold; 0 to 1440 min. Left out: 3. */
  height_minutes?: Quantity;
  /** how far the height of the pivot, or of the boom's clamp, may change at no cost; 0 to 20000 mm. Left out: 100. */
  height_threshold_mm?: Quantity;
  /** ... to lay another surface on the table, or to bring another table; 0 to 1440 min. Left out: 5. */
  surface_minutes?: Quantity;
}

/** `[[shot]]` of a shoot file. */
export interface ShotEntry {
  /** what the shot is called; every shot has its own */
  name: string;
  /** printed with the shot. Left out: none. */
  note?: string;
  /** a camera of this file. Left out: the only one in the file, or the one named under [shoot]. */
  camera?: string;
  /** the lens, or those from which the best is chosen. Left out: the one named under [shoot]; or, with a [kit], the best of it; or the only one in the file. */
  lens?: string | string[];
  /** a table of this file. Left out: the only one in the file, or the one named under [shoot]. */
  table?: string;
  /** a subject of this file, or one written here as [shot.subject]. Left out: the only one in the file, or the one named under [shoot]. */
  subject?: string | SubjectEntry;
  /** the support, or those from which the best is chosen. Left out: the one named under [shoot]; or, with a [kit], the best of it; or the only one in the file. */
  support?: string | string[];
  /** a bay of this file. Left out: as for the others; without any, no walls and no ceiling. */
  bay?: string;
  /** how far the camera stands above the horizontal through the aim point: 0 straight-on, 90 straight overhead, negative from below; -60 to 90 deg */
  elevation_deg: Quantity;
  /** where the camera stands around the subject seen from above, counter-clockwise: 0 in front, 90 to the right, 180 behind, 270 to the left; at 90 elevation it still says where the top of the frame points; -360 to 360 deg. Left out: 0, from the front. */
  bearing_deg?: Quantity;
  /** width of the delivered picture in the plane through the aim point square to the axis; 1 to 100000 mm. One of: exactly one of frame_width_mm, fill_width and fill_height. */
  frame_width_mm?: Quantity;
  /** share of the frame's width that the subject is to fill; 0.01 to 1. One of: exactly one of frame_width_mm, fill_width and fill_height. */
  fill_width?: Quantity;
  /** share of the frame's height that the subject is to fill; 0.01 to 1. One of: exactly one of frame_width_mm, fill_width and fill_height. */
  fill_height?: Quantity;
  /** how the camera is held. Left out: across. */
  hold?: "across" | "upright";
  /** the delivered picture's shape, width to height. Left out: the sensor's own. */
  delivered_aspect?: `${number}:${number}`;
  /** the aim point, and the subject's centre, to the right of the table's centre; -10000 to 10000 mm. Left out: 0. */
  aim_x_mm?: Quantity;
  /** the aim point, and the subject's centre, behind the table's centre; -10000 to 10000 mm. Left out: 0. */
  aim_y_mm?: Quantity;
  /** the aim point above the table top; half the subject's height when left out; -1000 to 5000 mm. Left out: half the subject's height. */
  aim_height_mm?: Quantity;
  /** the engraved f-number to shoot at; when left out, the one that holds the subject; 0.5 to 512. Left out: the one that holds the subject. */
  f_number?: Quantity;
  /** whether the plane of focus is to lie on the table, with a tilting lens. Left out: false. */
  focus_on_table?: boolean;
  /** how far behind the aim point a backdrop stands upright; 1 to 20000 mm. Left out: no backdrop. */
  backdrop_behind_mm?: Quantity;
  /** the backdrop's name, for the pull list. Left out: none. */
  backdrop?: string;
  /** the name of the board or cloth on the table, for order and pull list. Left out: none. */
  surface?: string;
  /** the side of the table on which the stand is to be. Left out: where [kit] names sides, the best of them; else the one of the shortest reach. */
  side?: string | string[];
  /** shots that come before this one: the whole loaf before it is cut. Left out: any order. */
  after?: string | string[];
  /** the shot that comes directly before this one: while it is hot. Left out: any order. */
  right_after?: string;
  /** the least room the light needs between the lens's front and the aim point; 0 to 10000 mm. Left out: 100. */
  light_clearance_mm?: Quantity;
  /** share of each slice of a focus stack that the next one overlaps; 0 to 0.95. Left out: 0.3. */
  stack_overlap?: Quantity;
  /** how far the elevation may be off; 0.001 to 20 deg. Left out: 1. */
  elevation_tolerance_deg?: Quantity;
  /** share by which the frame width may be off; 0.0001 to 0.5. Left out: 0.02. */
  frame_width_tolerance?: Quantity;
  /** how far from level the camera may be rolled; 0 to 20 deg. Left out: 0.5. */
  roll_tolerance_deg?: Quantity;
}

/** `[[log]]` of a shoot file. */
export interface LoggedEntry {
  /** the name of the shot that was measured */
  shot: string;
  /** what else there is to say. Left out: none. */
  note?: string;
  /** height of the axis at the sensor above the floor. One of: sensor_height_mm and horizontal_distance_mm, or sensor_distance_mm and elevation_deg, or sensor_height_mm and sensor_distance_mm. */
  sensor_height_mm?: MeasuredQuantity;
  /** height of the aim point above the floor. Left out: as planned. */
  aim_height_above_floor_mm?: MeasuredQuantity;
  /** from the aim point to the sensor, seen from above. One of: sensor_height_mm and horizontal_distance_mm, or sensor_distance_mm and elevation_deg, or sensor_height_mm and sensor_distance_mm. */
  horizontal_distance_mm?: MeasuredQuantity;
  /** straight from the aim point to the sensor. One of: sensor_height_mm and horizontal_distance_mm, or sensor_distance_mm and elevation_deg, or sensor_height_mm and sensor_distance_mm. */
  sensor_distance_mm?: MeasuredQuantity;
  /** of the axis, by an inclinometer. One of: sensor_height_mm and horizontal_distance_mm, or sensor_distance_mm and elevation_deg, or sensor_height_mm and sensor_distance_mm. */
  elevation_deg?: MeasuredQuantity;
  /** how far the camera is rolled, by an inclinometer across it. Left out: not measured. */
  roll_deg?: MeasuredQuantity;
}

/** A shoot file"s JSON form. */
export interface Shoot {
  shoot?: ShootEntry;
  camera?: Record<string, CameraEntry>;
  lens?: Record<string, LensEntry>;
  table?: Record<string, TableEntry>;
  subject?: Record<string, SubjectEntry>;
  support?: Record<string, SupportEntry>;
  bay?: Record<string, BayEntry>;
  criteria?: CriteriaEntry;
  kit?: KitEntry;
  weights?: WeightsEntry;
  order?: OrderEntry;
  shot?: ShotEntry[];
  log?: LoggedEntry[];
}

/** What was measured, as in an entry of a shoot file"s log. */
export type MeasuredEntry = Pick<
  LoggedEntry,
  | "sensor_height_mm"
  | "aim_height_above_floor_mm"
  | "horizontal_distance_mm"
  | "sensor_distance_mm"
  | "elevation_deg"
>;

/** Advice on elevation for a subject. */
export interface Advice {
  /** Lowest elevation advised. */
  least_deg: number;
  /** Highest. */
  most_deg: number;
  /** Where to begin looking. */
  start_deg: number;
  /** Why, the weightiest first. */
  reasons: [AdviceReason | null, AdviceReason | null, AdviceReason | null];
  /** Share of what is seen that is top, from the start. */
  top_share_at_start: number;
  /** Share of a vessel's contents that shows from the start, from far off. */
  contents_at_start: number | null;
  /** The elevation from which top and side show alike; 90 where the side never falls to that. */
  half_top_from_deg: number;
  /** The lowest elevation from which half of a vessel's contents show, from far off. */
  half_contents_from_deg: number | null;
}

/** One reason for the advice. */
export type AdviceReason =
  /** The subject is flat. */
  | "flat"
  /** It is tall. */
  | "tall"
  /** It is between flat and tall. */
  | "between"
  /** Detail on the top. */
  | "top_detail"
  /** Layers in the side. */
  | "side_layers"
  /** The contents of an opaque vessel. */
  | "contents"
  /** Layers behind clear glass. */
  | "clear_layers"
  /** A decorated glass. */
  | "decorated_glass"
  /** A laid table. */
  | "laid_table"
  /** The start is where the side is still nearly all that shows. */
  | "start_shows_side"
  /** The start is where the top is nearly all that shows. */
  | "start_shows_top"
  /** The start is where top and side show alike. */
  | "start_shows_both"
  /** The start is the lowest from which most of the contents show. */
  | "start_shows_contents"
  /** The start is the customary one. */
  | "start_customary";

/** Which elevation suits a subject. */
export interface Advised {
  subject: Subject;
  bearing_deg: number;
  advice: Advice;
  reasons_in_words: string[];
}

/** The shape in which a picture is delivered, such as 4 to 5. */
export interface Aspect {
  /** The width's part of the ratio, 0.01 to 100. */
  width: number;
  /** The height's part of the ratio, 0.01 to 100. */
  height: number;
}

/** A lens at a distance. */
export interface AtDistance {
  magnification: number;
  viewpoint: Viewpoint;
  lens: FocusedLens;
}

/** A backdrop standing upright behind the aim point, square to the level viewing direction, its foot on the table's plane. */
export interface Backdrop {
  /** Its level distance behind the aim point. */
  behind_mm: number;
  /** Width it needs; 0 where it is not seen, infinite where no width is enough. */
  width_mm: number | Infinite;
  /** Height it needs above the table; 0 where it is not seen, infinite where no height is enough. */
  height_mm: number | Infinite;
  /** Share of the picture it covers. */
  share: number;
}

/** Sandbags of one mass. */
export interface BagCount {
  /** What one weighs, to the gram. */
  mass_kg: number;
  /** How many. */
  count: number;
}

/** What would make the rig stand better. */
export interface Ballast {
  /** The counterweight that balances the boom at the clamp, along it; `null` without a boom, or where it would hang at the clamp itself. */
  counterweight_to_balance_kg: number | null;
  /** Weight to add on the column's axis so that the wanted factor is kept in the states asked for. */
  base_to_add_kg: number;
  /** The longest reach that keeps the wanted factor as shot, everything else as it is, the pivot staying where it is and the column moving; no longer than the boom reaches. `null` where no reach does, or without a boom. */
  longest_reach_mm: number | null;
  /** Direction of the first leg, counter-clockwise from the boom's, that gives the largest margin as shot: a leg under the centre of gravity. */
  best_first_leg_deg: number;
  /** That margin. */
  best_margin_mm: number;
  /** Direction of the first leg that gives the smallest margin as shot: an edge square to the centre of gravity. */
  worst_first_leg_deg: number;
  /** That margin. */
  worst_margin_mm: number;
}

/** The room around the table. A wall or ceiling left out is not there. */
export interface Bay {
  /** From the table's centre to the wall on the left (-x). */
  left_mm: number | null;
  /** From the table's centre to the wall on the right (+x). */
  right_mm: number | null;
  /** From the table's centre to the wall in front (-y). */
  front_mm: number | null;
  /** From the table's centre to the wall behind (+y). */
  back_mm: number | null;
  /** The ceiling above the floor. */
  ceiling_mm: number | null;
  /** Room kept under the ceiling. */
  ceiling_clearance_mm: number;
  /** Room wanted behind the camera for a person. */
  person_room_mm: number;
  /** The floor's steepest slope, in hundredths; up to 1 counts as level. */
  floor_slope_percent: number;
  /** Whether children or the public pass. */
  public_passes: boolean;
  /** Whether people are under the load: makers' ratings are then divided. */
  people_under: boolean;
}

/** How the shots of one bay fit it. */
export interface BayFit {
  /** The bay's name. */
  bay: string;
  /** Which shots are taken in it. */
  shots: number[];
  /** How each of them fits, in the same order, the table as it stands. */
  each: Fit[];
  /** How all of them together fit with the table as it stands, and turned by one, two and three quarters. */
  together: [Fit, Fit, Fit, Fit];
}

/** What the bay leaves around camera and rig; negative where they do not fit, infinite where there is no wall or ceiling. */
export interface BayRoom {
  /** From the outermost foot to the nearest wall. */
  feet_mm: number | Infinite;
  /** From the tail's end to the nearest wall; infinite without a boom. */
  tail_mm: number | Infinite;
  /** From the camera (body's back, pupil and pivot) to the nearest wall. */
  camera_mm: number | Infinite;
  /** From the highest point to the ceiling less the clearance. */
  ceiling_mm: number | Infinite;
  /** Behind the camera, in the direction of its bearing, from the camera's back or from the table's edge if that lies further out. */
  behind_camera_mm: number | Infinite;
}

/** A blur on the sensor. */
export interface Blurred {
  blur_mm: number;
}

/** The smallest board or cloth on the table that fills the frame. */
export interface Board {
  /** Across the picture. */
  width_mm: number;
  /** Along the picture. */
  depth_mm: number;
  /** Its centre on the table. */
  centre: FloorPoint;
  /** How far it is turned on the table, counter-clockwise: the bearing. */
  turned_deg: number;
}

/** What to book, and to pull. */
export interface Booked {
  /** Their names; wherever they are counted, from 0, it is along this list. */
  shots: string[];
  booking: Booking | null;
  pull_list: PullList;
  /** What goes with every load above a table or a person. */
  usual_cautions: string[];
}

/** The room to book. The walls of the bays that the briefs have do not enter it; the clearance under the ceiling and the room for a person behind the camera do, as each brief has them. */
export interface Booking {
  /** Smallest floor from side to side. */
  floor_across_mm: number;
  /** Smallest floor from front to back. */
  floor_along_mm: number;
  /** Where in it the table's centre stands: from the front, right, back and left wall. */
  table_from_walls: [Decided, Decided, Decided, Decided];
  /** Smallest ceiling, clearance included. */
  ceiling: Decided;
  /** Lowest pivot of the head above the floor. */
  lowest_pivot: Decided;
  /** Highest. */
  highest_pivot: Decided;
  /** Shortest reach of a boom; `null` where no shot takes one. */
  shortest_reach: Decided | null;
  /** Longest. */
  longest_reach: Decided | null;
}

/** A boom across the column. It spans from the tail's end to the head's pivot. */
export interface Boom {
  /** Longest horizontal reach from the column's axis to the head's pivot. */
  longest_reach_mm: number;
  /** Its length behind the clamp. */
  tail_mm: number;
  /** Mass, its centre of gravity at mid-length. */
  mass_kg: number;
  /** How far it rises towards the camera. */
  pitch_deg: number;
  /** Counterweight on the tail. */
  counterweight_kg: number;
  /** Where on the tail the counterweight hangs, along it from the clamp; the tail's end when `null`. */
  counterweight_out_mm: number | null;
  /** How stiff it is; without it no sag is computed. */
  stiffness: Stiffness | null;
  /** Share of critical damping with which its swing dies down; without it no waiting time is computed. */
  damping_ratio: number | null;
  /** The maker's rating of the load at full reach. */
  rated_load_kg: number | null;
  /** The maker's rating of what the clamp may hold unbalanced. */
  rated_clamp_moment_n_m: number | null;
}

/** One shot with everything it is to be shot with. */
export interface Brief {
  /** What the picture is to be. */
  shot: Shot;
  /** The camera. */
  camera: Camera;
  /** The lens. */
  lens: Lens;
  /** The table. */
  table: Table;
  /** The subject, standing under the aim point. */
  subject: Subject;
  /** What holds the camera. */
  support: Support;
  /** The room. */
  bay: Bay;
  /** The limits for cautions. */
  criteria: Criteria;
}

/** A camera body. Lengths are along the lens axis ("ahead", "behind") or square to it ("above", "below"), as the camera is held for the shot. */
export interface Camera {
  /** The sensor's longer side, 1 to 500. */
  sensor_width_mm: number;
  /** The sensor's shorter side, 1 to 500. */
  sensor_height_mm: number;
  /** Largest blur on the sensor that counts as sharp; the sensor's diagonal / 1500 when `null`. */
  circle_of_confusion_mm: number | null;
  /** The mounting socket ahead of the sensor. */
  socket_ahead_mm: number;
  /** The mounting socket below the axis. */
  socket_below_mm: number;
  /** The body's top above the axis. */
  body_above_mm: number;
  /** The body's back behind the sensor. */
  body_behind_mm: number;
  /** Mass without the lens. */
  mass_kg: number;
  /** Centre of gravity ahead of the sensor, on the axis. */
  centre_ahead_mm: number;
}

/** Places in the room. */
export interface Cast {
  /** For each place in the picture; `null` where the line of sight does not meet the plane. */
  points: (Point | null)[];
}

export interface Caution {
  code: CautionCode;
  number: number;
  level: Level;
  value: number | Infinite;
  limit: number | Infinite;
  unit: string;
  sentence: string;
}

export type CautionCode =
  /** The lens does not focus this near: sensor to aim point is under its closest focus. */
  | "nearer_than_focus"
  /** The frame is smaller than the lens can magnify. */
  | "magnification_beyond_lens"
  /** The focal length at this distance is taken on a straight line between the lens's two published points; the limit is the marked one. */
  | "focal_length_assumed"
  /** The lens's front comes nearer to the aim point than the light needs. */
  | "light_clearance"
  /** The lens's front would touch the subject. */
  | "lens_meets_subject"
  /** The f-number asked for does not hold the whole subject; the limit is the one that just does. */
  | "subject_not_held"
  /** No opening of the lens both holds the subject and keeps diffraction under the limit of blur: the value is the number of pictures of a focus stack. */
  | "stack_needed"
  /** The diffraction disc is larger than the limit of blur. */
  | "diffraction_shows"
  /** The lens does not have this f-number; the limit is the nearest it has. */
  | "f_number_not_on_lens"
  /** No tilt lays the plane of focus on the table: the hinge is nearer than the focal length. */
  | "tilt_impossible"
  /** The lens does not tilt as far as the plane of focus on the table needs. */
  | "tilt_beyond_lens"
  /** The top of the frame looks over the table's plane: the horizon, or the wall behind, is in the picture. */
  | "horizon_in_frame"
  /** The entrance pupil is not above the table top: nothing on the table's plane can be told. */
  | "table_from_below"
  /** The table's near edge hides this much of the subject's foot. */
  | "near_edge_hides_foot"
  /** The table does not fill the picture; the value is the share it covers. */
  | "table_ends_in_frame"
  /** The frame cuts the subject; the value is the least room left. */
  | "subject_cut"
  /** Straight-on, a lens this wide visibly stretches what is near the corners. */
  | "stretch_shows"
  /** The elevation lies outside what usually suits such a subject. */
  | "elevation_outside_advice"
  /** The subject stands over the table's edge. */
  | "subject_overhangs_table"
  /** The support does not go this high. */
  | "pivot_too_high"
  /** The support does not go this low. */
  | "pivot_too_low"
  /** The camera hangs where the column cannot stand, and the support has no boom. */
  | "boom_missing"
  /** The boom does not reach this far. */
  | "boom_too_short"
  /** The highest point of camera and rig does not fit under the ceiling. */
  | "ceiling_too_low"
  /** A foot of the support would stand in a wall; the value is the room left. */
  | "feet_outside_bay"
  /** The boom's tail would meet a wall; the value is the room left. */
  | "tail_outside_bay"
  /** The camera would be in a wall; the value is the room left. */
  | "camera_outside_bay"
  /** There is too little room behind the camera for a person. */
  | "no_room_behind_camera"
  /** The column would be in the picture over this length. */
  | "column_in_picture"
  /** The boom would be in the picture over this length. */
  | "boom_in_picture"
  /** Camera or pivot would be in the table: the value is the lowest point over the table top. */
  | "camera_meets_table"
  /** The boom would pass through the camera: the value is its distance from the lens axis, the limit the socket's. Turn the camera, or stand on another side. */
  | "boom_meets_camera"
  /** The payload is this share of the payload that would tip the stand. */
  | "payload_share"
  /** As shot, the restoring moment is only this many times the overturning one. */
  | "factor_as_shot"
  /** With the camera off and the counterweight on, the restoring moment is only this many times the overturning one: the stand can fall backwards. */
  | "factor_camera_off"
  /** With the counterweight off and the camera on, the restoring moment is only this many times the overturning one. */
  | "factor_counterweight_off"
  /** This little tilt, the floor's slope taken off, tips the stand. */
  | "tilt_to_tip"
  /** This little push sideways tips the stand. */
  | "push_to_tip"
  /** The boom is springy, so what is let go by hand loads it twice; the restoring moment is only this many times the overturning one. */
  | "springy_boom"
  /** The column carries more than its rating. */
  | "support_load_rating"
  /** The boom carries more than its rating. */
  | "boom_load_rating"
  /** The clamp holds more moment than its rating. */
  | "clamp_moment_rating"
  /** The head carries more than its rating. */
  | "head_load_rating"
  /** The head holds more moment than its rating. */
  | "head_moment_rating"
  /** The floor is not level; its slope has been taken off the tilt margin. */
  | "floor_not_level"
  /** The boom's sag moves the aim point further than the frame width may be off. */
  | "sag_moves_aim"
  /** This payload hangs over the table or over people: the cautions for overhead work apply. */
  | "load_overhead";

export interface Change {
  kind: ChangeKind;
  number: number;
  field: string;
  from: number;
  to: number;
  by: number;
  unit: string;
  sentence: string;
}

export type ChangeKind =
  /** A higher ceiling. */
  | "higher_ceiling"
  /** A boom that reaches further, of the same mass. */
  | "longer_boom"
  /** A column that goes higher, of the same mass. */
  | "higher_column"
  /** More weight on the base, where the base's weight lies already. */
  | "heavier_base"
  /** A narrower frame. */
  | "narrower_frame"
  /** A wider frame. */
  | "wider_frame"
  /** A lower elevation. */
  | "lower_elevation"
  /** A higher elevation. */
  | "higher_elevation"
  /** Another focal length; the lens's closest focus and principal planes in proportion, its mass and front as they are. */
  | "other_focal_length";

/** A change that makes a combination work. */
export interface ChangeWith {
  with: With;
  change: Change;
}

/** What a shot left open, and out of how much the best was taken. */
export interface Chosen {
  /** What there was to choose from. */
  from: OpenKit;
  /** How many combinations were planned. */
  planned: number;
  /** How many of them can be done. Where none can, the least stopped was taken. */
  possible: number;
}

/** A code with its number and what it means. */
export interface Code<T> {
  code: T;
  number: number;
  /** The unit of value and limit, for cautions. */
  unit: string | null;
  sentence: string;
}

/** Every code that can come out. */
export interface Codes {
  cautions: Code<CautionCode>[];
  faults: Code<FaultKind>[];
  advice_reasons: Code<AdviceReason>[];
  removals: Code<Removal>[];
  changes: Code<ChangeKind>[];
  /** What goes with every load above a table or a person. */
  usual_cautions: string[];
}

/** How to move the camera from where it was measured to where it is planned. Moves are the sensor's, in the upright plane through the aim point. */
export interface Correction {
  /** Up; negative: down. */
  up_mm: number;
  /** Level, away from the aim point; negative: closer. */
  away_mm: number;
  /** Elevation of the axis to be gained, the camera looking further down; negative: further up. A camera that is aimed at the aim point again after the move has it. */
  look_down_deg: number;
  /** Roll to be taken off: the measured one, the other way round; 0 where it was not measured. */
  roll_deg: number;
}

/** The limits for cautions about standing, and what the solved weights are to reach. All borrowed: no standard is written for camera stands. `Criteria::DEFAULT` says from where. */
export interface Criteria {
  /** Payload over the payload that tips the stand: a note above this. */
  payload_share_note: number;
  /** ... a warning above this. */
  payload_share_warn: number;
  /** ... a stop from this on. */
  payload_share_stop: number;
  /** Restoring over overturning moment: a note under this. */
  factor_note: number;
  /** ... a warning under this. */
  factor_warn: number;
  /** ... a stop under this. */
  factor_stop: number;
  /** A boom that swings slower than this is springy. */
  springy_frequency_hz: number;
  /** The factor under which a springy boom gets a warning. */
  springy_factor_warn: number;
  /** Tilt that tips the stand: a warning under this. */
  tilt_warn_deg: number;
  /** ... a stop under this. */
  tilt_stop_deg: number;
  /** ... a warning under this where children or the public pass. */
  tilt_public_warn_deg: number;
  /** Sideways push that tips the stand, as a share of its weight: a warning under this. */
  push_share_warn: number;
  /** A push above this is never asked for. */
  push_most_n: number;
  /** The push is taken at the pivot, but no higher than this. */
  push_height_most_mm: number;
  /** Makers' ratings are divided by this where people are under the load. */
  people_rating_divisor: number;
  /** The factor that the solved base weight and the longest reach keep. */
  wanted_factor: number;
  /** Whether the solved base weight is to keep it as shot. */
  hold_as_shot: boolean;
  /** Whether with the camera off and the counterweight on. */
  hold_camera_off: boolean;
  /** Whether with the counterweight off and the camera on. */
  hold_counterweight_off: boolean;
  /** A touched boom counts as settled when its swing has died down to this share. */
  settled_share: number;
}

/** The rule, in this order: the first criterion on which two combinations differ decides. Combinations that cannot be done come after all that can. */
export type Criterion =
  /** Fewer cautions to be looked at before shooting. */
  | "warnings"
  /** Fewer notes of concern: all but those that no choice of gear changes or betters (`NOTES_WITHOUT_CONCERN`). */
  | "notes"
  /** No visible stretch for the elevation (`WIDE_STRETCH`); 0 or 1. */
  | "stretch"
  /** Room for the light: less lacking between lens front and aim point. */
  | "light_room"
  /** A smaller share of the payload that tips the stand. */
  | "payload_share"
  /** A larger restoring over overturning moment as shot. */
  | "factor"
  /** A shorter reach. */
  | "reach"
  /** More tilt that it takes to tip it. */
  | "tilt"
  /** Equal in everything: earlier in the kit, by lens, then support, then side. */
  | "kit_order";

/** A length that one shot of the list decides. */
export interface Decided {
  /** The length. */
  mm: number;
  /** The shot that needs it, counted from 0; of equals the first. */
  by_shot: number;
}

/** An invented shoot. */
export interface Demo {
  text: string;
}

/** What is sharp around the plane through the aim point. */
export interface DepthOfField {
  /** Nearest sharp distance from the entrance pupil. */
  near_limit_mm: number;
  /** Farthest sharp distance from the entrance pupil; infinite from the hyperfocal distance on. */
  far_limit_mm: number | Infinite;
  /** Sharp in front of the aim point. */
  in_front_mm: number;
  /** Sharp behind the aim point; infinite with the far limit. */
  behind_mm: number | Infinite;
}

/** A measured value against the planned one. Its unit is that of the field that holds it. */
export interface Deviation {
  /** Measured less planned. */
  off: number;
  /** Standard uncertainty of that. */
  uncertainty: number | Infinite;
  /** How far it may be off, either way. */
  tolerance: number;
  /** Whether it is. */
  verdict: Verdict;
}

/** A direction, or a difference of two places, without unit of its own. */
export interface Direction {
  /** Component along the table's width. */
  x: number;
  /** Component along the table's depth. */
  y: number;
  /** Upward component. */
  z: number;
}

/** Drawings of a shot, each an SVG's text; `null` where it was not asked for. */
export interface Drawings {
  side: string | null;
  above: string | null;
  picture: string | null;
}

/** A drawing. */
export interface Drawn {
  /** The SVG's text. */
  svg: string;
}

/** A changed text. */
export interface Edited {
  /** The text. */
  text: string;
  /** Whether everything that was not changed is as it was, comments too. */
  rest_kept: boolean;
}

/** An input that was refused: nothing has been computed. */
export interface Fault {
  /** Why. */
  kind: FaultKind;
  /** The field's name, as in the shoot file, with what it belongs to: `lens.focal_length_mm`. */
  field: string;
  /** The value that was given. */
  value: number | Infinite;
  /** The least value that would have been accepted, the other fields being as they are. Never over `most`: where nothing would be accepted, no range is named (minus infinity to infinity), but for `FaultKind::NoRoomUnderCeiling`, whose least is the ceiling it would take. */
  least: number | Infinite;
  /** The most that would have been accepted. */
  most: number | Infinite;
}

/** Why an input was refused. The numbers are part of the interface and are never used again for something else: 1xx a single value, 2xx values that contradict each other, 3xx a question that the geometry answers with "there is none". */
export type FaultKind =
  /** The value is not a number, or infinite. */
  | "not_finite"
  /** The value is under the least that the field may have. */
  | "too_small"
  /** The value is over the most that the field may have. */
  | "too_large"
  /** Closest focus and largest magnification give the lens no focal length there (it would not be positive). */
  | "no_focal_length_at_closest_focus"
  /** Closest focus and largest magnification make the focal length grow by more than a tenth. */
  | "focal_length_grows"
  /** By closest focus and largest magnification the lens would come nearer and then recede again as the magnification grows. */
  | "focus_turns_back"
  /** The highest position of a support lies under its lowest. */
  | "highest_under_lowest"
  /** The contents of a vessel lie deeper than the vessel is high. */
  | "contents_under_vessel"
  /** The vessel is wider inside than outside. */
  | "vessel_wider_inside"
  /** The tube of a boom is wider inside than outside, or as wide. */
  | "tube_wider_inside"
  /** The legs meet the column inside the column's own radius. */
  | "feet_inside_column"
  /** The lens's largest f-number is smaller than its smallest. */
  | "f_numbers_reversed"
  /** No frame width gives the share of the frame that was asked for. */
  | "no_frame_width"
  /** The lens cannot focus at that distance. */
  | "no_focus"
  /** No focal length gives that distance and that frame width. */
  | "no_focal_length"
  /** No frame width keeps the camera under that ceiling. */
  | "no_room_under_ceiling"
  /** The measured place is the aim point itself, or no viewing distance. */
  | "no_viewpoint";

/** How wide the lens sees, drawn from the entrance pupil. */
export interface FieldAngles {
  /** Across the frame's width. */
  horizontal_deg: number;
  /** Across the frame's height. */
  vertical_deg: number;
  /** From corner to corner. */
  diagonal_deg: number;
}

/** The tables of a shoot file. */
export interface FieldList {
  sections: FieldTable[];
}

/** A table of a shoot file. */
export interface FieldTable {
  kind: string;
  /** Its heading in TOML. */
  heading: string;
  keys: ListedKey[];
}

/** How one or several shots fit a bay. */
export interface Fit {
  /** How often the table, with everything around it, is turned by 90 degrees, counter-clockwise seen from above: 0 to 3. */
  quarter_turns: number;
  /** Whether everything fits as the table stands, with room for the person. */
  fits: boolean;
  /** Room left to each of the bay's walls as the table stands: front, right, back, left; negative where it does not fit, infinite without a wall. */
  walls_left_mm: [number | Infinite, number | Infinite, number | Infinite, number | Infinite];
  /** Room left under the ceiling; negative where it does not fit, infinite without a ceiling. */
  ceiling_left_mm: number | Infinite;
  /** Where the table may stand so that table, feet, tail and camera are inside the walls. */
  moves: TableMoves;
  /** Where it may stand so that there is room for the person behind the camera too. */
  moves_with_person: TableMoves;
}

/** How shots fit their bays. */
export interface Fitted {
  /** Their names; wherever they are counted, from 0, it is along this list. */
  shots: string[];
  bays: BayFit[];
  /** What goes with every load above a table or a person. */
  usual_cautions: string[];
}

/** A place seen from above, on the floor or on the table. */
export interface FloorPoint {
  /** Along the table's width, to the right seen from the front edge. */
  x_mm: number;
  /** Along the table's depth, away from the front edge. */
  y_mm: number;
}

/** A focal length. */
export interface FocalLength {
  focal_length_mm: number;
}

/** What is sharp, for one opening and one subject. */
export interface Focus {
  /** The limit of blur on the sensor that everything here is reckoned with. */
  circle_of_confusion_mm: number;
  /** Whether that limit is the default, the sensor's diagonal / 1500. */
  circle_of_confusion_assumed: boolean;
  /** The opening: the brief's, or else the one chosen to hold the subject. */
  f_number: number;
  /** That opening as engraved. */
  engraved: number;
  /** Whether the brief named the opening. */
  f_number_given: boolean;
  /** Depth of field at that opening. */
  depth_of_field: DepthOfField;
  /** Whether that opening holds the subject; a mark of the third-stop scale counts as its exact value, so that the opening a plan suggests holds when it is given back by its engraving. */
  subject_held: boolean;
  /** The f-number that just holds the subject; 0 where the subject has no depth, infinite where it reaches the lens. */
  f_number_needed: number | Infinite;
  /** The next third stop up from it, where the lens has it. */
  f_number_to_hold: ThirdStop | null;
  /** Effective f-number N (1 + m/p) at the opening. */
  effective_f_number: number;
  /** Light lost to the lens's extension, 2 log2(1 + m/p) stops. */
  exposure_loss_stops: number;
  /** Diffraction disc's diameter on the sensor at the opening. */
  diffraction_disc_mm: number;
  /** The f-number at which that disc is as large as the limit of blur. */
  diffraction_limit_f_number: number;
  /** The focus stack, where no opening of the lens both holds the subject and stays under the diffraction limit. */
  stack: FocusStack | null;
}

/** A focus stack that holds the subject. */
export interface FocusStack {
  /** The opening to shoot it at: the smallest that stays under the diffraction limit, or the lens's widest. */
  f_number: number;
  /** That opening as engraved. */
  engraved: number;
  /** Pictures needed; 4294967295 stands for that many or more. */
  pictures: number;
  /** From one slice's plane of focus to the next, at the aim point. */
  step_mm: number | Infinite;
}

/** A focused lens, and its frame in the plane through the aim point. */
export interface Focused {
  lens: FocusedLens;
  /** What the picture loses against infinity. */
  exposure_loss_stops: number;
  /** The frame; `null` where the used area is not known. */
  frame: Frame | null;
}

/** A lens focused so that the plane through the aim point is pictured at a magnification. */
export interface FocusedLens {
  /** Picture size on the sensor / size in the plane through the aim point. */
  magnification: number;
  /** Focal length at this magnification. */
  focal_length_mm: number;
  /** Whether that focal length rests on the straight line between the lens's two published points. */
  focal_length_assumed: boolean;
  /** The lens's pupil ratio, exit / entrance. */
  pupil_ratio: number;
  /** Sensor to aim point. */
  sensor_distance_mm: number;
  /** Rear principal plane to sensor, f (1 + m). */
  image_distance_mm: number;
  /** Aim point to front principal plane, f (1 + 1/m). */
  object_distance_mm: number;
  /** Aim point to entrance pupil, the centre of perspective, f (1/m + 1/p). */
  pupil_distance_mm: number;
}

/** What of the table's plane the frame takes in. */
export interface Footprint {
  /** The frame's corners on the table's plane: near left, near right, far right, far left, where near is the bottom of the picture. A corner whose line of sight does not descend has none: there the horizon, or the wall behind, is in the frame. */
  corners: [FloorPoint | null, FloorPoint | null, FloorPoint | null, FloorPoint | null];
  /** Width at the bottom of the picture. */
  near_width_mm: number | null;
  /** Width at the top of the picture. */
  far_width_mm: number | null;
  /** Far width / near width. */
  keystone_ratio: number | null;
  /** From the near to the far line. */
  depth_mm: number | null;
  /** Whether the table's plane is seen from below: then nothing else here is an answer. */
  from_below: boolean;
  /** Whether each edge of the table shows: front, right, back, left. */
  edges_in_frame: [boolean, boolean, boolean, boolean];
  /** Share of the picture that the table top covers, were nothing on it; `null` seen from below. */
  table_share: number | null;
  /** The smallest board or cloth that fills the frame; `null` with the horizon in it. */
  board: Board | null;
}

/** How a shoot file is written. */
export type Form =
  /** As TOML. */
  | "toml"
  /** As JSON. */
  | "json";

/** A frame in the plane through the aim point. */
export interface Frame {
  width_mm: number;
  /** 0 where only the used width is known. */
  height_mm: number;
  field_angles: FieldAngles;
}

/** A frame width. */
export interface FrameWidth {
  frame_width_mm: number;
}

/** How much the frame takes in. */
export type Framing =
  /** The frame's width in the plane through the aim point. */
  | { frame_width_mm: number }
  /** The share of the frame's width that the subject is to fill; the frame width is solved for. */
  | { fill_width: number }
  /** The share of the frame's height that the subject is to fill; the frame width is solved for. */
  | { fill_height: number };

/** The head between boom or column and camera. */
export interface Head {
  /** Mass, taken to hang on the lens axis at the socket. */
  mass_kg: number;
  /** From the socket to the head's pivot, square to the axis. */
  pivot_below_socket_mm: number;
  /** The maker's rating of its load. */
  rated_load_kg: number | null;
  /** The maker's rating of the moment it holds. */
  rated_moment_n_m: number | null;
}

/** A shot held against its plan. */
export interface HeldAgainstPlan {
  shot: string;
  given: Measured;
  roll_deg: Measurement | null;
  on_set: OnSet;
  /** Whether what was measured is the last of the file's log. */
  from_log: boolean;
  /** What goes with every load above a table or a person. */
  usual_cautions: string[];
}

/** How the camera is held. */
export type Hold =
  /** The sensor's longer side level. */
  | "across"
  /** The sensor's longer side upright: width and height swap. */
  | "upright";

/** Something with a name, and the shots that use it, counted from 0. */
export interface Item {
  /** Its name. */
  name: string;
  /** The shots. */
  shots: number[];
}

/** What the picture of the subject lives by; the advice on elevation asks for it. */
export type JudgedBy =
  /** Its form: flat, tall or between. */
  | "form"
  /** Detail on its top. */
  | "top_detail"
  /** Layers in its side. */
  | "side_layers"
  /** The contents of an opaque vessel. */
  | "contents"
  /** Layers behind clear glass. */
  | "clear_layers"
  /** The contents of a decorated glass whose shape should still read. */
  | "decorated_glass"
  /** A whole laid table. */
  | "laid_table";

/** The kind of a mistake: one of the library's faults, or what is wrong with a text. */
export type Kind =
  /** A value, or a question, that was refused. */
  | FaultKind
  /** A mistake in writing. */
  | ProblemKind;

/** The largest frame under a ceiling. */
export interface LargestFrame {
  frame_width_mm: number;
  lens: FocusedLens;
  /** What goes with every load above a table or a person. */
  usual_cautions: string[];
}

/** A lens as its maker specifies it. */
export interface Lens {
  /** The marked focal length, for infinity. */
  focal_length_mm: number;
  /** Closest focus, sensor to object. */
  closest_focus_mm: number | null;
  /** Magnification at the closest focus. With both given, the focal length changes as the lens focuses (`Lens::focal_length_at`); with one or none it does not (unit focusing). */
  largest_magnification: number | null;
  /** Exit pupil / entrance pupil; 1 for a symmetric lens. */
  pupil_ratio: number;
  /** From the front principal plane to the rear one; may be negative; 0 for a thin lens. */
  principal_separation_mm: number;
  /** The widest opening's engraved f-number. */
  least_f_number: number;
  /** The smallest opening's engraved f-number. */
  most_f_number: number;
  /** The lens's front ahead of the sensor, for the room left to the light. */
  front_from_sensor_mm: number | null;
  /** How far a tilting lens tilts; 0 for any other. */
  largest_tilt_deg: number;
  /** Mass. */
  mass_kg: number;
  /** Centre of gravity ahead of the sensor, on the axis. */
  centre_ahead_mm: number;
}

/** How weighty a caution is. */
export type Level =
  /** Worth knowing. */
  | "note"
  /** To be looked at before shooting. */
  | "warn"
  /** Cannot be done as asked, or must not. */
  | "stop";

/** A key, and what it takes. */
export interface ListedKey {
  key: string;
  sort: Sort;
  /** The words, where it is one of some. */
  words: string[] | null;
  /** The kind of thing that is named. */
  names: string | null;
  /** The name of its type in TypeScript; `null` in a shoot file. */
  typed: string | null;
  /** What may be written, in few words. */
  allowed: string;
  /** The unit of a bare number. */
  unit: string | null;
  least: number | null;
  most: number | Infinite | null;
  standing: Needed;
  /** What it is when left out, or how it goes with the others. */
  otherwise: string | null;
  meaning: string;
}

/** An operation, with the keys it takes besides its name. */
export interface ListedOperation {
  name: string;
  meaning: string;
  keys: ListedKey[];
  /** The name of the answer's type. */
  answers: string;
}

/** A quantity that comes in. */
export interface ListedRange {
  /** Its name with what it belongs to. */
  field: string;
  unit: string;
  least: number | Infinite;
  most: number | Infinite;
  meaning: string;
}

/** On what a combination lost against the best. */
export interface Lost {
  /** The first criterion on which they differ. */
  on: Criterion;
  /** What this combination has there, in the criterion's unit. */
  value: number | Infinite;
  /** What the best has. */
  best: number | Infinite;
}

/** What was measured on the set. Heights are above the floor; the sensor's place is its mark on the body. */
export type Measured =
  /** Two heights and the level distance between sensor and aim point. */
  | { height_and_distance: {
      /** Height of the axis at the sensor. */
      sensor_height_mm: Measurement;
      /** Height of the aim point. */
      aim_height_above_floor_mm: Measurement;
      /** From the aim point to the sensor, seen from above. */
      horizontal_distance_mm: Measurement;
    } }
  /** A tape from the aim point to the sensor, and an inclinometer on the camera. */
  | { tape_and_inclinometer: {
      /** Straight from the aim point to the sensor. */
      sensor_distance_mm: Measurement;
      /** Of the axis. */
      elevation_deg: Measurement;
    } }
  /** Two heights and a tape from the aim point to the sensor. Near 90 degrees the elevation is hardly determined by these: its uncertainty grows without bound. */
  | { height_and_tape: {
      /** Height of the axis at the sensor. */
      sensor_height_mm: Measurement;
      /** Height of the aim point. */
      aim_height_above_floor_mm: Measurement;
      /** Straight from the aim point to the sensor. */
      sensor_distance_mm: Measurement;
    } };

/** A measured value with its standard uncertainty, in the unit of the field that holds it. */
export interface Measurement {
  /** What was read. */
  value: number;
  /** One standard deviation, 0 or more. */
  uncertainty: number;
}

/** What speaks for and against a combination that can be done. */
export interface Merits {
  /** Cautions to be looked at before shooting. */
  warnings: number;
  /** Notes of concern. */
  notes: number;
  /** Whether stretch shows, for the shot's elevation. */
  stretch_shows: boolean;
  /** What the light lacks between lens front and aim point; 0 where it has room, or where the lens's front is not known. */
  light_room_lacking_mm: number;
  /** Share of the payload that tips the stand. */
  payload_share: number | Infinite;
  /** Restoring over overturning moment as shot. */
  factor: number | Infinite;
  /** The boom's reach; 0 without one. */
  reach_mm: number;
  /** The tilt that tips it. */
  tilt_to_tip_deg: number;
}

/** The user's own minutes for each kind of change. What changes at once is added up. */
export interface Minutes {
  /** Another support. Setting it on its side and to its height is part of this. */
  support_minutes: number;
  /** The same support on another side of the table. */
  side_minutes: number;
  /** Another lens. */
  lens_minutes: number;
  /** The same support at a height that differs by more than the threshold. */
  height_minutes: number;
  /** Heights that differ by no more than this cost nothing. */
  height_threshold_mm: number;
  /** Another surface on the table. */
  surface_minutes: number;
}

/** One mistake. */
export interface Mistake {
  /** What sort it is. */
  kind: Kind;
  /** The number of that. */
  number: number;
  /** What is wrong, in one sentence. */
  sentence: string;
  /** What stands beside the place: what was expected there. */
  label: string | null;
  /** The field's name with what it belongs to, where it is about a number. */
  field: string | null;
  /** The value that was given. */
  value: number | Infinite | "not_a_number" | null;
  /** The least that would have been accepted. */
  least: number | Infinite | "not_a_number" | null;
  /** The most that would have been accepted. */
  most: number | Infinite | "not_a_number" | null;
  /** The unit of these: `mm`, `deg`, `kg` and so on, empty for a pure number. */
  unit: string | null;
  /** Whether it is in the request or in the shoot. */
  in: Where;
  /** The way to the value through keys and places counted from 0; empty where no one value is meant. */
  path: Step[];
  /** The keys that must be given there and are not. */
  lacks: string[];
  /** Its line in the text, from 1, where it came as a text. */
  line: number | null;
  /** Its column, in characters from 1. */
  column: number | null;
  /** Its place in the text. */
  stretch: Stretch | null;
  /** What else there is to know. */
  notes: string[];
  /** What to do about it. */
  helps: string[];
}

/** Whether a key must be there. */
export type Needed =
  /** It must. */
  | "required"
  /** It may be left out. */
  | "optional"
  /** It goes together with others, or instead of them. */
  | "one_of";

/** What was measured, against the plan. */
export interface OnSet {
  /** What the shot now is. */
  real: RealShot;
  /** Elevation, in degrees. */
  elevation_deg: Deviation;
  /** Frame width, as a share of the planned one. */
  frame_width_share: Deviation;
  /** Roll, in degrees, where it was measured. */
  roll_deg: Deviation | null;
  /** Which way to correct. */
  correction: Correction;
  /** All together: outside if one is, inside if all are. */
  verdict: Verdict;
}

/** Gear by name, to choose from. An empty list is not open. */
export interface OpenKit {
  /** Lenses, the preferred first. */
  lenses: string[];
  /** Supports. */
  supports: string[];
  /** Sides of the table. */
  sides: Side[];
}

/** All operations. */
export interface OperationList {
  operations: ListedOperation[];
}

/** The order found. */
export interface Order {
  /** The shots, counted from 0 as written, in the order in which to take them. Of orders that take the same, one that is known to be best keeps shots that were written earlier earlier. */
  sequence: number[];
  /** Re-rigging in this order, from the first shot's set-up on. */
  rerigging_minutes: number;
  /** The same in the order as written. */
  as_written_minutes: number;
  /** What is saved; negative where the order as written is shorter, but not allowed. */
  saved_minutes: number;
  /** Whether the order as written keeps to what must come first. */
  as_written_allowed: boolean;
  /** Whether no order takes less. */
  is_best: boolean;
  /** No order takes less than this: that of the order itself if it is the best, or else the least that joins all shots (a spanning tree, precedence left aside). */
  at_least_minutes: number;
}

/** The shots in order. */
export interface Ordered {
  shots: OrderedShot[];
  order: Order;
  /** What each kind of change takes. */
  minutes: Minutes;
}

/** One shot in the order. */
export interface OrderedShot {
  name: string;
  /** What is changed before it. */
  change: Rerig;
  minutes: number;
}

/** What became of a combination. */
export type Outcome =
  /** It can be done. */
  | { possible: {
      /** What it is ranked by. */
      merits: Merits;
      /** Why it is not the best; `null` for the best. */
      lost: Lost | null;
    } }
  /** Its plan has cautions that stop it. */
  | { stopped: Stops }
  /** It cannot be planned: the lens or the support is described wrongly, or the share of the frame that the subject is to fill cannot be had. */
  | { refused: Fault }
  /** Nothing: a place in the caller's list that no combination took. */
  | "vacant";

/** The subject's bounds in the picture, measured in the plane through the aim point from the frame's centre, and what they leave. */
export interface Outline {
  /** Its leftmost part, positive to the right. */
  left_mm: number;
  /** Its rightmost part. */
  right_mm: number;
  /** Its lowest part, positive upwards. */
  bottom_mm: number;
  /** Its highest part. */
  top_mm: number;
  /** Its width / the frame's. */
  fill_width: number;
  /** Its height / the frame's. */
  fill_height: number;
  /** Frame left above it; negative where it is cut. */
  room_above_mm: number;
  /** Frame left below it. */
  room_below_mm: number;
  /** Frame left on its left. */
  room_left_mm: number;
  /** Frame left on its right. */
  room_right_mm: number;
}

/** Camera, lens and head as one weight on the lens axis. */
export interface Payload {
  /** Mass of camera, lens and head. */
  mass_kg: number;
  /** Their centre of gravity ahead of the sensor, on the axis. */
  centre_ahead_mm: number;
  /** That centre in the room. */
  centre: Point;
  /** Moment at the head's pivot: payload weight × its centre's horizontal distance from the pivot. */
  head_moment_n_m: number;
}

/** What perspective does to the picture. */
export interface Perspective {
  /** Stretch of a small sphere at the frame's side, 1 / cos of its angle off the axis. */
  side_stretch: number;
  /** Stretch at the frame's corner. */
  corner_stretch: number;
  /** Image size of the subject's nearest part over that of its farthest; `null` where it reaches the entrance pupil. */
  size_ratio: number | null;
  /** Convergence of uprights: image scale at the subject's top over that at its foot, on its axis. */
  convergence: number | null;
}

/** A place in the picture, measured in the plane through the aim point. */
export interface PicturePoint {
  /** To the right of the frame's centre. */
  right_mm: number;
  /** Above the frame's centre. */
  up_mm: number;
}

/** Weights of one size to be pulled. */
export interface PieceCount {
  /** The size. */
  size: PieceSize;
  /** How many: the most that one shot takes. */
  count: number;
}

/** Pieces of one size that are at hand. */
export interface PieceSize {
  /** What one weighs; taken to the gram. */
  mass_kg: number;
  /** How many there are; as many as it takes, where `null`. */
  at_hand: number | null;
}

/** Pieces taken. */
export interface Pieces {
  /** How many of each size, in the order of the sizes. */
  counts: number[];
  /** What they weigh together. */
  mass_kg: number;
}

/** Where the support stands, and how its boom lies. */
export interface Placement {
  /** Whether a boom carries the camera; without one the column stands under the pivot. */
  boom_used: boolean;
  /** The side of the table on which the column stands; without a boom, of the nearest edge. */
  side: Side;
  /** Where the column stands. */
  column: FloorPoint;
  /** The level direction from the column in which the boom points; without a boom, towards the table. */
  towards: Direction;
  /** Nearest that the column's axis can come to the edge on that side. */
  stand_off_mm: number;
  /** From the column's axis to the pivot, horizontally; 0 without a boom. */
  reach_mm: number;
  /** The reach it would take from each side: front, right, back, left. */
  reach_from_sides_mm: [number, number, number, number];
  /** Along the boom from the clamp to the pivot, reach / cos pitch. */
  boom_length_mm: number;
  /** The clamp above the floor, reach × tan pitch under the pivot; without a boom, the pivot itself. */
  clamp_height_mm: number;
  /** The tail's end, if a boom is used. */
  tail_end: Point | null;
  /** The first leg's direction, counter-clockwise from `towards`. */
  first_leg_deg: number;
  /** How many of `feet` there are. */
  leg_count: number;
  /** The feet on the floor, the first `leg_count` of them; the rest repeat the column's place. */
  feet: FloorPoint[];
  /** The highest point of camera and rig above the floor. */
  highest_point_mm: number;
}

/** Everything needed to rig a shot. */
export interface Plan {
  /** The part of the sensor that the delivered picture uses. */
  used_area: UsedArea;
  /** Width of the frame in the plane through the aim point. */
  frame_width_mm: number;
  /** Height of the frame in that plane. */
  frame_height_mm: number;
  /** The aim point above the table top. */
  aim_height_mm: number;
  /** The lens as focused. */
  lens: FocusedLens;
  /** How wide it sees. */
  field_angles: FieldAngles;
  /** Where the camera is. */
  pose: Pose;
  /** The frame on the table. */
  footprint: Footprint;
  /** The backdrop, if the brief has one. */
  backdrop: Backdrop | null;
  /** Where the subject lies along the axis. */
  subject_depth: SubjectDepth;
  /** The subject in the picture; `null` where it reaches the entrance pupil. */
  outline: Outline | null;
  /** What shows of its top, side and contents. */
  shares: Shares;
  /** What is sharp. */
  focus: Focus;
  /** The tilt that lays the plane of focus on the table. */
  tilt: Tilt;
  /** How it will look. */
  perspective: Perspective;
  /** Which elevation suits the subject. */
  advice: Advice;
  /** Camera, lens and head as one weight. */
  payload: Payload;
  /** Where the support stands, and its boom. */
  placement: Placement;
  /** What the bay leaves around it. */
  bay_room: BayRoom;
  /** How much of it shows in the picture. */
  support_in_picture: SupportInPicture;
  /** Whether it stands. */
  stability: Stability;
  /** What would make it stand better. */
  ballast: Ballast;
  /** How the boom bends; `null` without a boom or its stiffness. */
  sag: Sag | null;
  /** How exactly it must be set. */
  tolerance: Tolerance;
  /** Whether a load hangs above the table or a person: the cautions for overhead work (`crate::caution::overhead::OVERHEAD_CAUTIONS`) then go with every number. */
  overhead: boolean;
  /** In which order camera and counterweight come off. */
  removal: Removal;
  /** What to look at. */
  cautions: Caution[];
}

/** A shot, planned and drawn. */
export interface PlannedAndDrawn {
  planned: PlannedShot;
  drawings: Drawings;
}

/** A shoot, planned. */
export interface PlannedShoot {
  title: string | null;
  note: string | null;
  shots: PlannedShot[];
  /** What goes with every load above a table or a person. */
  usual_cautions: string[];
}

/** A shot, planned. */
export interface PlannedShot {
  name: string;
  note: string | null;
  uses: Uses;
  /** What it left open, and out of how much the best was taken; `null` where it names everything. */
  chosen: Chosen | null;
  /** Whether no caution stops it. */
  can_be_rigged: boolean;
  brief: Brief;
  plan: Plan;
  removal_in_words: string;
  /** What goes with every load above a table or a person. */
  usual_cautions?: string[];
}

/** A place in the room. */
export interface Point {
  /** Along the table's width, to the right seen from the front edge. */
  x_mm: number;
  /** Along the table's depth, away from the front edge. */
  y_mm: number;
  /** Above the floor. */
  z_mm: number;
}

/** Where the camera is. All heights are above the floor. */
export interface Pose {
  /** The viewing direction, length one. */
  forward: Direction;
  /** To the right in the picture. */
  right: Direction;
  /** Up in the picture. */
  up: Direction;
  /** The point aimed at: on the axis and in the plane of focus. */
  aim: Point;
  /** The entrance pupil, the centre of perspective. */
  pupil: Point;
  /** The axis at the sensor. */
  sensor: Point;
  /** The mounting socket. */
  socket: Point;
  /** The head's pivot, which the support carries. */
  pivot: Point;
  /** The highest point of body and lens; what meets the ceiling. */
  body_top_mm: number;
  /** From the aim point to the sensor, seen from above. */
  sensor_from_aim_mm: number;
  /** From the aim point to the pivot, seen from above, along the level direction from the aim point towards the camera; straight overhead, how far the pivot stands beside the axis. */
  pivot_from_aim_mm: number;
  /** From the nearest table edge to the sensor, seen from above; negative over the table. */
  sensor_from_edge_mm: number;
  /** From the nearest table edge to the pivot, seen from above; negative over the table. */
  pivot_from_edge_mm: number;
  /** Lens front to aim point, where the lens's front is known. */
  front_clearance_mm: number | null;
}

/** A sheet. */
export interface Printed {
  /** The HTML's text. */
  html: string;
}

/** What sort of mistake it is. The numbers are part of the interface and are never used again for something else; those of `crate::fault::FaultKind` lie under 400. */
export type ProblemKind =
  /** A number was refused: the fault says why. */
  | "refused"
  /** The text is not what TOML or JSON is. */
  | "not_readable"
  /** A key is not known there. */
  | "unknown_key"
  /** A word is none of those that may stand there. */
  | "unknown_word"
  /** A name stands for nothing in the file. */
  | "unknown_name"
  /** Something is of the wrong kind: a text for a number, a value for a table. */
  | "wrong_kind"
  /** A text cannot be read as the quantity that is wanted. */
  | "no_quantity"
  /** Something that must be given is not. */
  | "lacking"
  /** Things are given that exclude each other. */
  | "conflicting"
  /** A name or a key is taken already. */
  | "repeated"
  /** There are more than can be told apart. */
  | "too_many"
  /** It is not clear which of several things is meant. */
  | "undecided";

/** Places in the picture. */
export interface Projected {
  /** For each place in the room; `null` at or behind the entrance pupil's plane. */
  places: (PicturePoint | null)[];
}

/** Everything to be pulled. Each kind in the order in which the shots come to it. */
export interface PullList {
  /** Cameras. */
  cameras: Item[];
  /** Lenses. */
  lenses: Item[];
  /** Tables. */
  tables: Item[];
  /** Supports. */
  supports: SupportItem[];
  /** Boards and cloths on the table. */
  surfaces: Sheet[];
  /** Backdrops. */
  backdrops: Sheet[];
  /** Counterweights, of each size at hand. */
  counterweights: PieceCount[];
  /** Weights for the base, of each size at hand. */
  base_weights: PieceCount[];
  /** Shots for which what is at hand is not enough. */
  weights_lacking: number[];
  /** What each shot takes of them. */
  shot_weights: ShotWeights[];
}

/** Every quantity that comes in. */
export interface RangeList {
  ranges: ListedRange[];
}

/** The combinations of what is open, the best first. */
export interface Ranked {
  shot: string;
  open: OpenKit;
  /** How many were planned. */
  planned: number;
  /** How many of them can be done. */
  possible: number;
  candidates: RankedCombination[];
  /** The smallest changes, each alone; none where some combination can be done as it is. */
  changes: ChangeWith[];
  /** What goes with every load above a table or a person. */
  usual_cautions: string[];
}

/** A combination with what became of it. */
export interface RankedCombination {
  with: With;
  outcome: Outcome;
  /** On what it lost against the best, or what stops it, in one sentence. */
  in_words: string | null;
}

/** What a shoot file says. */
export interface Read {
  /** How it was written. */
  form: Form;
  /** Its JSON form. */
  shoot: Shoot;
  /** What is wrong with it: with none it can be planned. */
  mistakes: Mistake[];
}

/** What the shot really is. Uncertainties are first order, the measured values taken as independent. */
export interface RealShot {
  /** Elevation; its uncertainty may be infinite (see `Measured::HeightAndTape`). */
  elevation_deg: Measurement;
  /** Frame width in the plane through the aim point; its uncertainty is infinite at 1:1 with unit focusing, where the distance hardly depends on the magnification. */
  frame_width_mm: Measurement;
  /** Straight from the aim point to the sensor. */
  sensor_distance_mm: Measurement;
  /** Picture size on the sensor / size in the plane through the aim point. */
  magnification: number;
}

/** In which order camera and counterweight come off. */
export type Removal =
  /** There is no counterweight to take off. */
  | "no_counterweight"
  /** The camera first: with it off and the counterweight on, the rig stands better. */
  | "camera_first"
  /** The counterweight first. */
  | "counterweight_first"
  /** Either alone would tip it: hold the boom, and take both off together. */
  | "hold_both";

/** A viewpoint repeated. */
export interface Repeated {
  viewpoint: Viewpoint;
  focal_length_mm: number;
}

/** What has to be changed between two shots. */
export interface Rerig {
  /** The support, with its side and height. */
  support: boolean;
  /** The side, of the same support. */
  side: boolean;
  /** The lens. */
  lens: boolean;
  /** The height, of the same support, by more than the threshold. */
  height: boolean;
  /** The surface on the table. */
  surface: boolean;
}

/** What bending does to the picture. */
export interface Sag {
  /** The boom's end moves, square to the boom. */
  deflection_mm: number;
  /** Height lost by the camera. */
  height_lost_mm: number;
  /** The boom's end turns down. */
  end_slope_deg: number;
  /** The aim point moves in the picture's plane: sensor distance × slope. */
  aim_shift_mm: number;
  /** First bending frequency; infinite without any mass. */
  frequency_hz: number | Infinite;
  /** How long to wait after touching it until the swing has died down to the settled share; `null` without a damping ratio. */
  settling_s: number | null;
}

/** A sandbag, hung clear of the floor so that it pulls. */
export interface Sandbag {
  /** Mass; 0 for no bag. */
  mass_kg: number;
  /** How far from the column's axis it hangs. */
  out_mm: number;
  /** In which direction, counter-clockwise from the boom's (without a boom: from the direction to the table). */
  direction_deg: number;
  /** Its centre of gravity above the floor. */
  height_mm: number;
}

/** The outer shape, its sides along the table's. */
export type Shape =
  /** A box. */
  | {
    /** Along the table's width. */
    width_mm: number;
    /** Along the table's depth. */
    depth_mm: number;
  }
  /** An upright round. */
  | {
    /** Its diameter. */
    diameter_mm: number;
  };

/** How much of what is seen is top, side or contents. */
export interface Shares {
  /** Top: sin e × top area / (sin e × top area + cos e × side area as seen from the bearing); 0 where the top is not seen. */
  top: number;
  /** Side: the rest. */
  side: number;
  /** Share of a vessel's contents that shows past the near wall, for the real camera. */
  contents: number | null;
  /** The same from far off. */
  contents_from_far: number | null;
}

/** What is sharp. */
export interface Sharp {
  depth_of_field: DepthOfField;
  circle_of_confusion_mm: number;
  effective_f_number: number;
  diffraction_disc_mm: number;
  diffraction_limit_f_number: number;
}

/** A board, cloth or backdrop, and how large its shots ask it to be. */
export interface Sheet {
  /** Its name; `null` for those that have none, taken together. */
  name: string | null;
  /** The shots that see it. */
  shots: number[];
  /** Width that fills the frame of each of them, across the picture. */
  width_mm: number;
  /** Depth along the picture of a board or cloth; height above the table of a backdrop. */
  depth_or_height_mm: number;
  /** Those of the shots that no size fills, since they look over the horizon; they do not count in the size. */
  never_filled: number[];
}

/** What the picture is to be. */
export interface Shot {
  /** How far the camera stands above the horizontal through the aim point, -60 to 90. */
  elevation_deg: number;
  /** Where it stands around the subject seen from above, counter-clockwise from the front. */
  bearing_deg: number;
  /** How much the frame takes in. */
  framing: Framing;
  /** How the camera is held. */
  hold: Hold;
  /** The delivered picture's shape; the sensor's own when `null`. */
  delivered_aspect: Aspect | null;
  /** Aim point, and subject, to the right of the table's centre. */
  aim_x_mm: number;
  /** Aim point, and subject, behind the table's centre. */
  aim_y_mm: number;
  /** Aim point above the table top; half the subject's height when `null`. */
  aim_height_mm: number | null;
  /** The engraved f-number to shoot at; chosen to hold the subject when `null`. */
  f_number: number | null;
  /** Whether the plane of focus is to lie on the table, with a tilting lens. */
  focus_on_table: boolean;
  /** How far behind the aim point a backdrop stands. */
  backdrop_behind_mm: number | null;
  /** The side on which the stand is to be; the one of the shortest reach when `null`. */
  side: Side | null;
  /** Least room the light needs between lens front and aim point. */
  light_clearance_mm: number;
  /** Share of each slice of a focus stack that the next one overlaps. */
  stack_overlap: number;
  /** How far the elevation may be off. */
  elevation_tolerance_deg: number;
  /** Share by which the frame width may be off. */
  frame_width_tolerance: number;
  /** How far from level the camera may be rolled. */
  roll_tolerance_deg: number;
}

/** The weights that one shot needs. */
export interface ShotWeights {
  /** The counterweight that balances the boom, rounded up to whole pieces; `null` without a boom, with nowhere on it to hang one, or with no pieces to choose from. */
  counterweight: WholeWeight | null;
  /** The weight on the base in all (what the brief has on it included) with which, after the counterweight, the stand keeps the wanted factor and is not stopped, rounded up to whole pieces; `null` with no pieces to choose from. */
  base_weight: WholeWeight | null;
  /** The brief with these weights on it; where pieces are lacking, with what it had. */
  brief: Brief;
  /** The weightiest caution of its plan. */
  worst: Level | null;
}

/** One of the table's edges, and the side of it on which a stand can be. */
export type Side =
  /** Towards -y. */
  | "front"
  /** Towards +x. */
  | "right"
  /** Towards +y. */
  | "back"
  /** Towards -x. */
  | "left";

/** Changes that let a shot be taken. */
export interface SmallestChanges {
  changes: Change[];
}

/** What sort of value a key takes. */
export type Sort =
  /** A number in the key's unit, or a text with its own unit. */
  | "number"
  /** A whole number. */
  | "whole"
  /** One of some words. */
  | "word"
  /** True or false. */
  | "flag"
  /** A text. */
  | "text"
  /** Two numbers such as `"4:5"`. */
  | "aspect"
  /** The name of something of the shoot. */
  | "name"
  /** A table, or a list of them. */
  | "table"
  /** The name of something of the shoot, or a table. */
  | "name_or_table"
  /** What its own words say. */
  | "own";

/** How the rig stands: the three states, and the payload against the one that would tip it. */
export interface Stability {
  /** Everything on. */
  as_shot: Standing;
  /** Camera, lens and head off, counterweight on. */
  camera_off: Standing;
  /** Counterweight off, camera on. */
  counterweight_off: Standing;
  /** The payload (the whole of it) that would tip the rig; infinite where it hangs inside the feet. */
  payload_to_tip_kg: number | Infinite;
  /** The payload over that; infinite where the rig tips without any. */
  payload_share: number | Infinite;
}

/** A focus stack. */
export interface Stacked {
  /** `null` where the nearest point reaches the lens. */
  stack: FocusStack | null;
}

/** How the rig stands in one state. */
export interface Standing {
  /** Everything that stands on the feet. */
  total_mass_kg: number;
  /** The whole centre of gravity, in the room. */
  centre: Point;
  /** The centre of gravity inside the nearest edge; negative: it tips. */
  margin_mm: number;
  /** The edge with that margin, counted from 1: between the leg of that number and the next. */
  margin_edge: number;
  /** Smallest restoring over overturning moment about an edge; infinite where no weight hangs outside. */
  factor: number | Infinite;
  /** The edge over which that is; that of the margin where the factor is infinite. */
  factor_edge: number;
  /** That edge's outward direction, counter-clockwise from the boom's. */
  factor_edge_direction_deg: number;
  /** Moment that restores about that edge. */
  restoring_moment_n_m: number;
  /** Moment that overturns about that edge. */
  overturning_moment_n_m: number;
  /** The tilt of the floor that tips it, in the worst direction. */
  tilt_to_tip_deg: number;
  /** The sideways push at the pivot that tips it, in the worst direction. */
  push_to_tip_n: number | Infinite;
  /** What the boom leaves unbalanced at the clamp; 0 without a boom. */
  clamp_moment_n_m: number;
}

/** A step on the way from a file to one of its values: into a table, or into a list, counted from 0. */
export type Step =
  /** The key in a table. */
  | string
  /** The place in a list. */
  | number;

/** How stiff a boom is in bending. */
export type Stiffness =
  /** EI, measured or given by the maker. */
  | {
    /** EI in newton square metres. */
    bending_stiffness_n_m2: number;
  }
  /** From a round tube: π/64 (D⁴ - d⁴) E. */
  | {
    /** Outside diameter. */
    tube_outside_mm: number;
    /** Inside diameter; 0 for a solid bar. */
    tube_inside_mm: number;
    /** Young's modulus in newtons per square millimetre: aluminium 69000, steel 207000. */
    tube_modulus_n_per_mm2: number;
  };

/** The cautions that stop a plan. */
export interface Stops {
  /** How many. */
  count: number;
  /** The one that is passed furthest (`overshoot`); the first of equals in the order of their codes. */
  worst: Caution;
  /** How far that one is passed, as a share of its limit. */
  overshoot_share: number | Infinite;
}

/** A stretch of a text, in bytes of UTF-8. */
export interface Stretch {
  /** Its first byte. */
  start: number;
  /** The byte after its last. */
  end: number;
}

/** A subject on the table. */
export interface Subject {
  /** Its outer shape. */
  shape: Shape;
  /** Its height above the table top; 0 for something flat. */
  height_mm: number;
  /** Its opening, if it is a vessel. */
  vessel: Vessel | null;
  /** What its picture lives by. */
  judged_by: JudgedBy;
}

/** Where the subject lies along the axis, from the aim point. */
export interface SubjectDepth {
  /** Towards the camera to the subject's nearest part; negative where all of it lies behind. */
  nearest_mm: number;
  /** Away from the camera to its farthest part. */
  farthest_mm: number;
}

/** What the camera stands on. */
export interface Support {
  /** The lowest the column carries the head's pivot, or the boom's clamp. */
  lowest_pivot_mm: number;
  /** The highest. */
  highest_pivot_mm: number;
  /** Half the column's thickness. */
  column_radius_mm: number;
  /** Feet, 3 to 8, evenly spaced on a circle. */
  leg_count: number;
  /** Radius of that circle. */
  foot_radius_mm: number;
  /** The height at which the legs meet the column. */
  legs_top_mm: number;
  /** The first leg's direction, counter-clockwise from the boom's (without a boom: from the direction to the table). `null`: 0 with a boom, a leg under the load; half a leg spacing without one, the gap facing the table. */
  first_leg_deg: number | null;
  /** Room kept between the stand and the table. */
  table_clearance_mm: number;
  /** Mass of column and legs. */
  mass_kg: number;
  /** Centre of gravity of column and legs above the floor, on the column's axis. */
  centre_height_mm: number;
  /** Weight added to the base, on the column's axis. */
  base_mass_kg: number;
  /** That weight's height. */
  base_height_mm: number;
  /** Sandbags where they hang; a mass of 0 is no bag. */
  sandbags: Sandbag[];
  /** The maker's rating of what the column may carry in all. */
  rated_load_kg: number | null;
  /** The head. */
  head: Head;
  /** The boom, if there is one. */
  boom: Boom | null;
}

/** How much of the support shows in the picture, were nothing before it. */
export interface SupportInPicture {
  /** Length of the column inside the frame. */
  column_mm: number;
  /** Length of the boom and its tail inside the frame. */
  boom_mm: number;
}

/** A support, and how far its shots ask it to go. */
export interface SupportItem {
  /** Its name. */
  name: string;
  /** The shots. */
  shots: number[];
  /** Lowest height at which the column carries the pivot or the boom's clamp. */
  lowest_mm: number;
  /** Highest. */
  highest_mm: number;
  /** Shortest reach of its boom; `null` where no shot takes the boom. */
  shortest_reach_mm: number | null;
  /** Longest. */
  longest_reach_mm: number | null;
  /** Sandbags that the briefs hang on it: mass and most of that mass at once. */
  sandbags: BagCount[];
}

/** A shot with one quantity varied. */
export interface Swept {
  shot: string;
  /** What is varied. */
  quantity: string;
  rows: SweptRow[];
  /** What goes with every load above a table or a person. */
  usual_cautions: string[];
}

/** One of them. */
export interface SweptRow {
  value: number;
  /** The lens's name, in a sweep over lenses. */
  lens: string | null;
  brief: Brief;
  /** Its plan; `null` where it was refused. */
  plan: Plan | null;
  /** Why. */
  refused: Mistake | null;
}

/** A rectangular table, its centre above the origin. */
export interface Table {
  /** Along the front edge. */
  width_mm: number;
  /** From the front edge to the back edge. */
  depth_mm: number;
  /** The top above the floor. */
  height_mm: number;
  /** What is under the top. */
  underside: Underside;
}

/** How far the table, and everything around it, may be moved from where it stands. Infinite towards a side without a wall. Where the least exceeds the most there is no such place. */
export interface TableMoves {
  /** To the right (negative: to the left), at least. */
  least_right_mm: number | Infinite;
  /** To the right, at most. */
  most_right_mm: number | Infinite;
  /** To the back (negative: to the front), at least. */
  least_back_mm: number | Infinite;
  /** To the back, at most. */
  most_back_mm: number | Infinite;
}

/** An f-number of the third-stop scale. */
export interface ThirdStop {
  /** The exact value, 2^(k/6); this is what is reckoned with. */
  f_number: number;
  /** What is engraved for it. */
  engraved: number;
}

/** Third stops. */
export interface ThirdStops {
  up: ThirdStop;
  down: ThirdStop;
}

/** The tilt that lays the plane of focus on the table. */
export interface Tilt {
  /** From the front principal point to the table's plane, parallel to the sensor, downwards in the picture; infinite straight overhead, negative where the point lies under the table. */
  hinge_distance_mm: number | Infinite;
  /** The tilt: 0 straight overhead; `null` where no tilt does it, the hinge being nearer than the focal length or the camera under the table. */
  tilt_deg: number | null;
}

/** The f-number that holds a depth. */
export interface ToHold {
  /** Infinite where no f-number does. */
  f_number_needed: number | Infinite;
  third_stop: ThirdStop | null;
  diffraction_limit_f_number: number;
}

/** How far the sensor may be moved from its planned place, the camera always aimed at the aim point, so that elevation and frame width stay within their tolerances. Each move alone; exact, not first order; infinite where no move in that direction leaves them. */
export interface Tolerance {
  /** Up. */
  up_mm: number | Infinite;
  /** Down. */
  down_mm: number | Infinite;
  /** Level, away from the aim point. */
  away_mm: number | Infinite;
  /** Level, towards the aim point. */
  closer_mm: number | Infinite;
  /** Drift across the frame from side to side of the roll tolerance, W tan ρ. */
  roll_drift_mm: number;
}

/** What is under the table top. */
export type Underside =
  /** Feet of a stand pass under the top. */
  | "open"
  /** A plinth or a cabinet: feet stay outside. */
  | "closed";

/** The part of the sensor that the delivered picture uses, as the camera is held. */
export interface UsedArea {
  /** Level side. */
  width_mm: number;
  /** Upright side. */
  height_mm: number;
}

/** The names of what a shot is shot with. */
export interface Uses {
  /** The camera. */
  camera: string;
  /** The lens. */
  lens: string;
  /** The table. */
  table: string;
  /** `null` where the subject is written in the shot itself. */
  subject: string | null;
  /** The support. */
  support: string;
  /** `null` where the file describes no bay. */
  bay: string | null;
  /** The board or cloth on the table; `null` where it has no name. */
  surface: string | null;
  /** The backdrop; `null` where it has no name, or there is none. */
  backdrop: string | null;
}

/** Whether a measured value is within its tolerance. */
export type Verdict =
  /** Within it, the uncertainty taken into account. */
  | "inside"
  /** The uncertainty is too large to say. */
  | "undecided"
  /** Outside it, the uncertainty taken into account. */
  | "outside";

/** The version of the library. */
export interface Version {
  version: string;
}

/** A round opening at the subject's height, with contents below the rim. */
export interface Vessel {
  /** Diameter inside. */
  inside_diameter_mm: number;
  /** From the rim down to the contents. */
  contents_below_rim_mm: number;
}

/** A viewpoint: from where a picture is seen, and how much it takes in. The same viewpoint gives the same perspective with any camera. */
export interface Viewpoint {
  /** Aim point to entrance pupil. */
  pupil_distance_mm: number;
  /** Width of the frame in the plane through the aim point. */
  frame_width_mm: number;
}

/** Where a mistake is. */
export type Where =
  /** In the request. */
  | "request"
  /** In the shoot. */
  | "shoot";

/** Pieces that are enough. */
export interface WholePieces {
  /** `null` where all that is at hand weighs less. */
  pieces: Pieces | null;
}

/** One weight in whole pieces. */
export interface WholeWeight {
  /** What is needed at least. */
  needed_kg: number;
  /** The pieces; `null` where all that is at hand is not enough. */
  pieces: Pieces | null;
}

/** A combination by its names. */
export interface With {
  lens: string;
  support: string;
  /** The side of the table; `null`: the shot's own, or directly under the camera, on no one side. */
  side: Side | null;
}

/** A shoot file's text. */
export interface Written {
  text: string;
}

/** Everything that can be asked, with what it takes and what it answers. */
export interface Operations {
  /** The version of the library. */
  version: {
    request: {
    };
    answer: Version;
  };
  /** Everything that can be asked, with the keys that each takes. */
  operations: {
    request: {
    };
    answer: OperationList;
  };
  /** Every key of a shoot file, with its range or kind, and what it is when left out. */
  fields: {
    request: {
      /** one kind of table: shoot, camera, lens and so on. Left out: all kinds. */
      kind?: string;
    };
    answer: FieldList;
  };
  /** Every quantity that comes in, with its unit, least and most. */
  ranges: {
    request: {
    };
    answer: RangeList;
  };
  /** Every code that can come out, with its number and its sentence, and the usual cautions for overhead work. */
  codes: {
    request: {
    };
    answer: Codes;
  };
  /** An invented shoot to begin with, in TOML. */
  demo: {
    request: {
    };
    answer: Demo;
  };
  /** A shoot file's JSON form, values as they are written, with the mistakes that are in it. */
  read: {
    request: {
      /** a shoot file: its text, or its JSON form */
      shoot: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
    };
    answer: Read;
  };
  /** A shoot as the text of a shoot file. */
  write: {
    request: {
      /** a shoot file: its text, or its JSON form */
      shoot: Shoot | string;
      /** how the text is written. Left out: toml. */
      form?: "toml" | "json";
    };
    answer: Written;
  };
  /** A shoot file's text with some values changed and everything else, comments too, as it was. */
  edit: {
    request: {
      /** a shoot file: its text, or its JSON form */
      shoot: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** what to put where: a path of keys and places, and a value or null */
      edits: Edit[];
    };
    answer: Edited;
  };
  /** One shot of a shoot, planned. */
  plan: {
    request: {
      /** a shoot file: its text, or its JSON form */
      shoot: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: the only shot of the file. */
      shot?: string;
    };
    answer: PlannedShot;
  };
  /** All shots of a shoot, planned. */
  plan_shoot: {
    request: {
      /** a shoot file: its text, or its JSON form */
      shoot: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
    };
    answer: PlannedShoot;
  };
  /** Which elevation suits a subject, and why. */
  advice: {
    request: {
      /** a subject, or the name of one of the file. One of: a subject, or a shoot with one, or with a shot. */
      subject?: SubjectEntry | string;
      /** a shoot file: its text, or its JSON form. One of: a subject, or a shoot with one, or with a shot. */
      shoot?: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: none. */
      shot?: string;
      /** where the camera stands around the subject seen from above, counter-clockwise: 0 in front, 90 to the right, 180 behind, 270 to the left; at 90 elevation it still says where the top of the frame points; -360 to 360 deg. Left out: the shot's, or 0. */
      bearing_deg?: Quantity;
    };
    answer: Advised;
  };
  /** One quantity of a shot varied, everything else as it is. A swept focal length belongs to a lens that keeps it as it focuses. */
  sweep: {
    request: {
      /** a shoot file: its text, or its JSON form */
      shoot: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: the only shot of the file. */
      shot?: string;
      /** what is varied */
      quantity: "elevation_deg" | "frame_width_mm" | "focal_length_mm" | "lens";
      /** the first value, as the quantity is written. One of: from and to with step or steps, but for lens. */
      from?: Quantity;
      /** the last value. One of: from and to with step or steps, but for lens. */
      to?: Quantity;
      /** from one value to the next. One of: from and to with step or steps, but for lens. */
      step?: Quantity;
      /** how many steps from the first value to the last; 1 to 999. One of: from and to with step or steps, but for lens. */
      steps?: number;
    };
    answer: Swept;
  };
  /** A shot drawn to scale, as SVG: from the side, from above, or as the lens will see it. */
  draw: {
    request: {
      /** a shoot file: its text, or its JSON form */
      shoot: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: the only shot of the file. */
      shot?: string;
      /** from where it is drawn */
      view: "side" | "above" | "picture";
      /** the unit in which lengths are written. Left out: millimetres. */
      unit?: "millimetres" | "centimetres" | "metres" | "inches" | "feet_inches";
      /** width in quarter millimetres of paper; 480 to 4000. Left out: 720. */
      width?: Quantity;
      /** most height, in the same; 240 to 4000. Left out: 460. */
      height?: Quantity;
      /** what identifiers inside the drawing begin with: another for each drawing on a page. Left out: shot. */
      id?: string;
    };
    answer: Drawn;
  };
  /** One shot planned and drawn at once, for a page that follows every change. */
  plan_and_draw: {
    request: {
      /** a shoot file: its text, or its JSON form */
      shoot: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: the only shot of the file. */
      shot?: string;
      /** from where it is drawn */
      views: ("side" | "above" | "picture")[];
      /** the unit in which lengths are written. Left out: millimetres. */
      unit?: "millimetres" | "centimetres" | "metres" | "inches" | "feet_inches";
      /** width in quarter millimetres of paper; 480 to 4000. Left out: 720. */
      width?: Quantity;
      /** most height, in the same; 240 to 4000. Left out: 460. */
      height?: Quantity;
      /** what identifiers inside the drawing begin with: another for each drawing on a page. Left out: shot. */
      id?: string;
    };
    answer: PlannedAndDrawn;
  };
  /** Where places in the room appear in the picture of a shot. */
  project: {
    request: {
      /** a shoot file: its text, or its JSON form */
      shoot: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: the only shot of the file. */
      shot?: string;
      /** places in the room */
      points: PointEntry[];
    };
    answer: Projected;
  };
  /** Which places of a level plane appear at places in the picture of a shot. */
  cast_onto_level: {
    request: {
      /** a shoot file: its text, or its JSON form */
      shoot: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: the only shot of the file. */
      shot?: string;
      /** places in the picture, from its centre, in the plane through the aim point */
      places: PicturePointEntry[];
      /** a level plane above the floor; -100000 to 100000 mm. Left out: the table top. */
      z_mm?: Quantity;
    };
    answer: Cast;
  };
  /** The part of the sensor that the delivered picture uses. */
  used_area: {
    request: {
      /** a camera, or the name of one of the file. Left out: the shot's, or the file's only one. */
      camera?: CameraEntry | string;
      /** a shoot file: its text, or its JSON form. Left out: none: everything is given here. */
      shoot?: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: none. */
      shot?: string;
      /** how the camera is held. Left out: the shot's, or across. */
      hold?: "across" | "upright";
      /** the delivered picture's shape, width to height. Left out: the shot's, or the sensor's own. */
      delivered_aspect?: `${number}:${number}`;
    };
    answer: UsedArea;
  };
  /** Where a lens stands when it is focused, and how wide it sees. */
  lens_focused: {
    request: {
      /** a lens, or the name of one of the file. Left out: the shot's, or the file's only one. */
      lens?: LensEntry | string;
      /** a camera, or the name of one of the file. Left out: the shot's, or the file's only one. */
      camera?: CameraEntry | string;
      /** a shoot file: its text, or its JSON form. Left out: none: everything is given here. */
      shoot?: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: none. */
      shot?: string;
      /** how the camera is held. Left out: the shot's, or across. */
      hold?: "across" | "upright";
      /** the delivered picture's shape, width to height. Left out: the shot's, or the sensor's own. */
      delivered_aspect?: `${number}:${number}`;
      /** width of the part of the sensor that the delivered picture uses; 0.01 to 500 mm. Left out: the camera's. */
      used_width_mm?: Quantity;
      /** used sensor width / frame width; 0.00001 to 500. One of: magnification or frame_width_mm, or a shot. */
      magnification?: Quantity;
      /** width of the delivered picture in the plane through the aim point square to the axis; 1 to 100000 mm. One of: magnification or frame_width_mm, or a shot. */
      frame_width_mm?: Quantity;
    };
    answer: Focused;
  };
  /** What is sharp at an f-number, and what that costs in light and diffraction. */
  depth_of_field: {
    request: {
      /** a lens, or the name of one of the file. Left out: the shot's, or the file's only one. */
      lens?: LensEntry | string;
      /** a camera, or the name of one of the file. Left out: the shot's, or the file's only one. */
      camera?: CameraEntry | string;
      /** a shoot file: its text, or its JSON form. Left out: none: everything is given here. */
      shoot?: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: none. */
      shot?: string;
      /** how the camera is held. Left out: the shot's, or across. */
      hold?: "across" | "upright";
      /** the delivered picture's shape, width to height. Left out: the shot's, or the sensor's own. */
      delivered_aspect?: `${number}:${number}`;
      /** width of the part of the sensor that the delivered picture uses; 0.01 to 500 mm. Left out: the camera's. */
      used_width_mm?: Quantity;
      /** used sensor width / frame width; 0.00001 to 500. One of: magnification or frame_width_mm, or a shot. */
      magnification?: Quantity;
      /** width of the delivered picture in the plane through the aim point square to the axis; 1 to 100000 mm. One of: magnification or frame_width_mm, or a shot. */
      frame_width_mm?: Quantity;
      /** the engraved f-number to shoot at; when left out, the one that holds the subject; 0.5 to 512 */
      f_number: Quantity;
      /** largest blur on the sensor that counts as sharp; the sensor's diagonal / 1500 when left out; 0.0001 to 5 mm. Left out: the camera's. */
      circle_of_confusion_mm?: Quantity;
    };
    answer: Sharp;
  };
  /** The f-number that holds everything from the nearest to the farthest point sharp, and the third stop above it. */
  f_number_to_hold: {
    request: {
      /** a lens, or the name of one of the file. Left out: the shot's, or the file's only one. */
      lens?: LensEntry | string;
      /** a camera, or the name of one of the file. Left out: the shot's, or the file's only one. */
      camera?: CameraEntry | string;
      /** a shoot file: its text, or its JSON form. Left out: none: everything is given here. */
      shoot?: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: none. */
      shot?: string;
      /** how the camera is held. Left out: the shot's, or across. */
      hold?: "across" | "upright";
      /** the delivered picture's shape, width to height. Left out: the shot's, or the sensor's own. */
      delivered_aspect?: `${number}:${number}`;
      /** width of the part of the sensor that the delivered picture uses; 0.01 to 500 mm. Left out: the camera's. */
      used_width_mm?: Quantity;
      /** used sensor width / frame width; 0.00001 to 500. One of: magnification or frame_width_mm, or a shot. */
      magnification?: Quantity;
      /** width of the delivered picture in the plane through the aim point square to the axis; 1 to 100000 mm. One of: magnification or frame_width_mm, or a shot. */
      frame_width_mm?: Quantity;
      /** how far the nearest point lies before the aim point, along the axis; -100000 to 100000 mm */
      nearest_mm: Quantity;
      /** how far the farthest point lies behind the aim point, along the axis; -100000 to 100000 mm */
      farthest_mm: Quantity;
      /** largest blur on the sensor that counts as sharp; the sensor's diagonal / 1500 when left out; 0.0001 to 5 mm. Left out: the camera's. */
      circle_of_confusion_mm?: Quantity;
    };
    answer: ToHold;
  };
  /** How many pictures, and how far apart, hold everything from the nearest to the farthest point sharp. */
  focus_stack: {
    request: {
      /** a lens, or the name of one of the file. Left out: the shot's, or the file's only one. */
      lens?: LensEntry | string;
      /** a camera, or the name of one of the file. Left out: the shot's, or the file's only one. */
      camera?: CameraEntry | string;
      /** a shoot file: its text, or its JSON form. Left out: none: everything is given here. */
      shoot?: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: none. */
      shot?: string;
      /** how the camera is held. Left out: the shot's, or across. */
      hold?: "across" | "upright";
      /** the delivered picture's shape, width to height. Left out: the shot's, or the sensor's own. */
      delivered_aspect?: `${number}:${number}`;
      /** width of the part of the sensor that the delivered picture uses; 0.01 to 500 mm. Left out: the camera's. */
      used_width_mm?: Quantity;
      /** used sensor width / frame width; 0.00001 to 500. One of: magnification or frame_width_mm, or a shot. */
      magnification?: Quantity;
      /** width of the delivered picture in the plane through the aim point square to the axis; 1 to 100000 mm. One of: magnification or frame_width_mm, or a shot. */
      frame_width_mm?: Quantity;
      /** the engraved f-number to shoot at; when left out, the one that holds the subject; 0.5 to 512 */
      f_number: Quantity;
      /** how far the nearest point lies before the aim point, along the axis; -100000 to 100000 mm */
      nearest_mm: Quantity;
      /** how far the farthest point lies behind the aim point, along the axis; -100000 to 100000 mm */
      farthest_mm: Quantity;
      /** share of each slice of a focus stack that the next one overlaps; 0 to 0.95. Left out: 0.3. */
      stack_overlap?: Quantity;
      /** largest blur on the sensor that counts as sharp; the sensor's diagonal / 1500 when left out; 0.0001 to 5 mm. Left out: the camera's. */
      circle_of_confusion_mm?: Quantity;
    };
    answer: Stacked;
  };
  /** The blur on the sensor of a point at a distance. */
  blur: {
    request: {
      /** a lens, or the name of one of the file. Left out: the shot's, or the file's only one. */
      lens?: LensEntry | string;
      /** a camera, or the name of one of the file. Left out: the shot's, or the file's only one. */
      camera?: CameraEntry | string;
      /** a shoot file: its text, or its JSON form. Left out: none: everything is given here. */
      shoot?: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: none. */
      shot?: string;
      /** how the camera is held. Left out: the shot's, or across. */
      hold?: "across" | "upright";
      /** the delivered picture's shape, width to height. Left out: the shot's, or the sensor's own. */
      delivered_aspect?: `${number}:${number}`;
      /** width of the part of the sensor that the delivered picture uses; 0.01 to 500 mm. Left out: the camera's. */
      used_width_mm?: Quantity;
      /** used sensor width / frame width; 0.00001 to 500. One of: magnification or frame_width_mm, or a shot. */
      magnification?: Quantity;
      /** width of the delivered picture in the plane through the aim point square to the axis; 1 to 100000 mm. One of: magnification or frame_width_mm, or a shot. */
      frame_width_mm?: Quantity;
      /** the engraved f-number to shoot at; when left out, the one that holds the subject; 0.5 to 512 */
      f_number: Quantity;
      /** from the entrance pupil to a point, along the axis; 0.001 to 1000000 mm */
      distance_mm: Quantity;
    };
    answer: Blurred;
  };
  /** The tilt of the lens that lays the plane of focus on the table. */
  tilt_onto_table: {
    request: {
      /** a lens, or the name of one of the file. Left out: the shot's, or the file's only one. */
      lens?: LensEntry | string;
      /** a camera, or the name of one of the file. Left out: the shot's, or the file's only one. */
      camera?: CameraEntry | string;
      /** a shoot file: its text, or its JSON form. Left out: none: everything is given here. */
      shoot?: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: none. */
      shot?: string;
      /** how the camera is held. Left out: the shot's, or across. */
      hold?: "across" | "upright";
      /** the delivered picture's shape, width to height. Left out: the shot's, or the sensor's own. */
      delivered_aspect?: `${number}:${number}`;
      /** width of the part of the sensor that the delivered picture uses; 0.01 to 500 mm. Left out: the camera's. */
      used_width_mm?: Quantity;
      /** used sensor width / frame width; 0.00001 to 500. One of: magnification or frame_width_mm, or a shot. */
      magnification?: Quantity;
      /** width of the delivered picture in the plane through the aim point square to the axis; 1 to 100000 mm. One of: magnification or frame_width_mm, or a shot. */
      frame_width_mm?: Quantity;
      /** how far the camera stands above the horizontal through the aim point: 0 straight-on, 90 straight overhead, negative from below; -60 to 90 deg */
      elevation_deg: Quantity;
      /** the aim point above the table top; half the subject's height when left out; -1000 to 5000 mm. Left out: 0, the table top. */
      aim_height_mm?: Quantity;
    };
    answer: Tilt;
  };
  /** The third stops above and below an f-number, as they are and as they are engraved. */
  third_stop: {
    request: {
      /** the engraved f-number to shoot at; when left out, the one that holds the subject; 0.5 to 512 */
      f_number: Quantity;
    };
    answer: ThirdStops;
  };
  /** The magnification of a lens at a distance, and the frame it shows there. */
  magnification_at: {
    request: {
      /** a lens, or the name of one of the file. Left out: the shot's, or the file's only one. */
      lens?: LensEntry | string;
      /** a camera, or the name of one of the file. Left out: the shot's, or the file's only one. */
      camera?: CameraEntry | string;
      /** a shoot file: its text, or its JSON form. Left out: none: everything is given here. */
      shoot?: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: none. */
      shot?: string;
      /** how the camera is held. Left out: the shot's, or across. */
      hold?: "across" | "upright";
      /** the delivered picture's shape, width to height. Left out: the shot's, or the sensor's own. */
      delivered_aspect?: `${number}:${number}`;
      /** width of the part of the sensor that the delivered picture uses; 0.01 to 500 mm. Left out: the camera's. */
      used_width_mm?: Quantity;
      /** straight from the aim point to the sensor; 0.001 to 1000000 mm */
      sensor_distance_mm: Quantity;
    };
    answer: AtDistance;
  };
  /** The focal length that shows a frame from a distance, of a lens that keeps it as it focuses. */
  focal_length_for: {
    request: {
      /** a camera, or the name of one of the file. Left out: the shot's, or the file's only one. */
      camera?: CameraEntry | string;
      /** a shoot file: its text, or its JSON form. Left out: none: everything is given here. */
      shoot?: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: none. */
      shot?: string;
      /** how the camera is held. Left out: the shot's, or across. */
      hold?: "across" | "upright";
      /** the delivered picture's shape, width to height. Left out: the shot's, or the sensor's own. */
      delivered_aspect?: `${number}:${number}`;
      /** width of the part of the sensor that the delivered picture uses; 0.01 to 500 mm. Left out: the camera's. */
      used_width_mm?: Quantity;
      /** from the aim point to the entrance pupil; 0.001 to 1000000 mm */
      pupil_distance_mm: Quantity;
      /** width of the delivered picture in the plane through the aim point square to the axis; 1 to 100000 mm */
      frame_width_mm: Quantity;
      /** exit pupil / entrance pupil; 1 when left out; 0.05 to 20. Left out: 1. */
      pupil_ratio?: Quantity;
    };
    answer: FocalLength;
  };
  /** The lens that repeats on the stand a viewpoint found with another camera in the hand. */
  viewpoint: {
    request: {
      /** marked focal length of the camera in the hand: its real one, not an equivalent; 1 to 3000 mm */
      hand_focal_length_mm: Quantity;
      /** width of the part of its sensor that the picture used; 0.01 to 500 mm */
      hand_sensor_width_mm: Quantity;
      /** from the aim point to its sensor, straight; 0.001 to 1000000 mm */
      hand_distance_mm: Quantity;
      /** a camera, or the name of one of the file. Left out: the shot's, or the file's only one. */
      camera?: CameraEntry | string;
      /** a shoot file: its text, or its JSON form. Left out: none: everything is given here. */
      shoot?: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: none. */
      shot?: string;
      /** how the camera is held. Left out: the shot's, or across. */
      hold?: "across" | "upright";
      /** the delivered picture's shape, width to height. Left out: the shot's, or the sensor's own. */
      delivered_aspect?: `${number}:${number}`;
      /** width of the part of the sensor that the delivered picture uses; 0.01 to 500 mm. Left out: the camera's. */
      used_width_mm?: Quantity;
      /** exit pupil / entrance pupil; 1 when left out; 0.05 to 20. Left out: 1. */
      pupil_ratio?: Quantity;
    };
    answer: Repeated;
  };
  /** The frame width at which a subject fills a share of the frame. */
  frame_width_for_fill: {
    request: {
      /** a lens, or the name of one of the file. Left out: the shot's, or the file's only one. */
      lens?: LensEntry | string;
      /** a camera, or the name of one of the file. Left out: the shot's, or the file's only one. */
      camera?: CameraEntry | string;
      /** a subject, or the name of one of the file. Left out: the shot's, or the file's only one. */
      subject?: SubjectEntry | string;
      /** a shoot file: its text, or its JSON form. Left out: none: everything is given here. */
      shoot?: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: none. */
      shot?: string;
      /** how the camera is held. Left out: the shot's, or across. */
      hold?: "across" | "upright";
      /** the delivered picture's shape, width to height. Left out: the shot's, or the sensor's own. */
      delivered_aspect?: `${number}:${number}`;
      /** share of the frame's width that the subject is to fill; 0.01 to 1. One of: fill_width or fill_height. */
      fill_width?: Quantity;
      /** share of the frame's height that the subject is to fill; 0.01 to 1. One of: fill_width or fill_height. */
      fill_height?: Quantity;
      /** how far the camera stands above the horizontal through the aim point: 0 straight-on, 90 straight overhead, negative from below; -60 to 90 deg. Left out: the shot's. */
      elevation_deg?: Quantity;
      /** where the camera stands around the subject seen from above, counter-clockwise: 0 in front, 90 to the right, 180 behind, 270 to the left; at 90 elevation it still says where the top of the frame points; -360 to 360 deg. Left out: the shot's, or 0. */
      bearing_deg?: Quantity;
      /** the aim point above the table top; half the subject's height when left out; -1000 to 5000 mm. Left out: half the subject's height. */
      aim_height_mm?: Quantity;
    };
    answer: FrameWidth;
  };
  /** The largest frame that keeps the camera under a ceiling; whether stand and boom reach there, a plan says. */
  largest_frame_width: {
    request: {
      /** a lens, or the name of one of the file. Left out: the shot's, or the file's only one. */
      lens?: LensEntry | string;
      /** a camera, or the name of one of the file. Left out: the shot's, or the file's only one. */
      camera?: CameraEntry | string;
      /** a bay, or the name of one of the file. Left out: the shot's, or the file's only one. */
      bay?: BayEntry | string;
      /** a shoot file: its text, or its JSON form. Left out: none: everything is given here. */
      shoot?: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: none. */
      shot?: string;
      /** how the camera is held. Left out: the shot's, or across. */
      hold?: "across" | "upright";
      /** the delivered picture's shape, width to height. Left out: the shot's, or the sensor's own. */
      delivered_aspect?: `${number}:${number}`;
      /** width of the part of the sensor that the delivered picture uses; 0.01 to 500 mm. Left out: the camera's. */
      used_width_mm?: Quantity;
      /** above the floor; 500 to 100000 mm. Left out: the bay's. */
      ceiling_mm?: Quantity;
      /** room kept under the ceiling; 0 to 5000 mm. Left out: the bay's, or 0. */
      ceiling_clearance_mm?: Quantity;
      /** how far the camera stands above the horizontal through the aim point: 0 straight-on, 90 straight overhead, negative from below; -60 to 90 deg. Left out: the shot's. */
      elevation_deg?: Quantity;
      /** where the camera stands around the subject seen from above, counter-clockwise: 0 in front, 90 to the right, 180 behind, 270 to the left; at 90 elevation it still says where the top of the frame points; -360 to 360 deg. Left out: the shot's, or 0. */
      bearing_deg?: Quantity;
      /** height of the aim point above the floor; 0 to 100000 mm. Left out: the shot's. */
      aim_height_above_floor_mm?: Quantity;
      /** from the socket to the head's pivot, square to the axis; -500 to 1000 mm. Left out: the shot's, or 0. */
      pivot_below_socket_mm?: Quantity;
    };
    answer: LargestFrame;
  };
  /** What was really set, from what was measured on the set, and how surely. */
  real_shot: {
    request: {
      /** what was measured on the set: one of three sets, each value alone or with its uncertainty */
      measured: MeasuredEntry;
      /** a lens, or the name of one of the file. Left out: the shot's, or the file's only one. */
      lens?: LensEntry | string;
      /** a camera, or the name of one of the file. Left out: the shot's, or the file's only one. */
      camera?: CameraEntry | string;
      /** a shoot file: its text, or its JSON form. Left out: none: everything is given here. */
      shoot?: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: none. */
      shot?: string;
      /** how the camera is held. Left out: the shot's, or across. */
      hold?: "across" | "upright";
      /** the delivered picture's shape, width to height. Left out: the shot's, or the sensor's own. */
      delivered_aspect?: `${number}:${number}`;
      /** width of the part of the sensor that the delivered picture uses; 0.01 to 500 mm. Left out: the camera's. */
      used_width_mm?: Quantity;
    };
    answer: RealShot;
  };
  /** What was measured on the set held against a shot's plan: which way to correct, and whether it is within its tolerances. */
  on_set: {
    request: {
      /** a shoot file: its text, or its JSON form */
      shoot: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: the only shot of the file. */
      shot?: string;
      /** what was measured on the set: one of three sets, each value alone or with its uncertainty. Left out: the last of the file's log. */
      measured?: MeasuredEntry;
      /** what an inclinometer across the camera says, alone or with its uncertainty. Left out: not measured. */
      roll_deg?: MeasuredQuantity;
    };
    answer: HeldAgainstPlan;
  };
  /** Which lens, support and side of the file's kit take a shot best: every combination planned and ranked, and the smallest changes where none can be done. */
  choose: {
    request: {
      /** a shoot file: its text, or its JSON form */
      shoot: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: the only shot of the file. */
      shot?: string;
      /** what is to be chosen. Left out: what the shot leaves open, or all. */
      open?: ("lens" | "support" | "side")[];
    };
    answer: Ranked;
  };
  /** The smallest changes that, each alone, let a stopped shot be taken. */
  smallest_changes: {
    request: {
      /** a shoot file: its text, or its JSON form */
      shoot: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the name of a shot of the file. Left out: the only shot of the file. */
      shot?: string;
    };
    answer: SmallestChanges;
  };
  /** Whether the shots fit their bays as the table stands, and where in it the table may stand. */
  fit: {
    request: {
      /** a shoot file: its text, or its JSON form */
      shoot: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the names of shots that do not count. Left out: none: all shots count. */
      leave_out?: string[];
    };
    answer: Fitted;
  };
  /** The smallest room in which all the shots can be taken, and everything they need from the shelves. */
  book: {
    request: {
      /** a shoot file: its text, or its JSON form */
      shoot: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the names of shots that do not count. Left out: none: all shots count. */
      leave_out?: string[];
    };
    answer: Booked;
  };
  /** The order of shots that needs the least re-rigging. */
  order: {
    request: {
      /** a shoot file: its text, or its JSON form */
      shoot: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the names of shots that do not count. Left out: none: all shots count. */
      leave_out?: string[];
    };
    answer: Ordered;
  };
  /** The pieces that together weigh at least so much, and as little over it as their sizes allow. */
  whole_pieces: {
    request: {
      /** what pieces must weigh together at least; 0 to 2000 kg */
      needed_kg: Quantity;
      /** pieces at hand */
      sizes: PieceSizeEntry[];
    };
    answer: WholePieces;
  };
  /** The sheet that hangs on the stand, all shots with their drawings: one HTML text with nothing to fetch. */
  sheet: {
    request: {
      /** a shoot file: its text, or its JSON form */
      shoot: Shoot | string;
      /** how the text is written. Left out: JSON where the text begins with a brace. */
      form?: "toml" | "json";
      /** the names of shots that do not count. Left out: none: all shots count. */
      leave_out?: string[];
      /** the unit in which lengths are written. Left out: millimetres. */
      unit?: "millimetres" | "centimetres" | "metres" | "inches" | "feet_inches";
      /** the paper that it is printed on. Left out: as the printer has it. */
      paper?: "a4" | "letter";
    };
    answer: Printed;
  };
}

/** The name of something that can be asked. */
export type Operation = keyof Operations;

/** What was wrong with a question. The first mistake's figures stand here as well. */
export class TablerigError extends Error {
  readonly operation: Operation;
  /** Everything that was wrong. */
  readonly mistakes: [Mistake, ...Mistake[]];
  readonly code: Mistake["kind"];
  readonly number: number;
  readonly field: string | null;
  readonly value: Mistake["value"];
  readonly least: Mistake["least"];
  readonly most: Mistake["most"];
  readonly unit: string | null;
  readonly path: Step[];
  readonly line: number | null;
  readonly column: number | null;
}

/** The library, loaded. */
export class Tablerig {
  /** Over a compiled module. */
  constructor(module: WebAssembly.Module);
  /** Asks by name; the answer, or a TablerigError is thrown. */
  ask<O extends Operation>(
    operation: O,
    ...request: {} extends Operations[O]["request"] ? [Operations[O]["request"]?] : [Operations[O]["request"]]
  ): Operations[O]["answer"];
  /** The same with texts: a request's JSON in, `{"ok": ...}` or `{"mistakes": [...]}` out. */
  askText(request: string): string;
  /** How much memory it holds, in bytes. It never shrinks. */
  readonly memoryBytes: number;
}

/** Loads the library with its drawings. */
export function load(url?: string | URL): Promise<Tablerig>;

/** Loads the smaller library, which does not draw. */
export function loadWithoutDrawings(url?: string | URL): Promise<Tablerig>;
