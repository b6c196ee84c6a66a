/* What holds the camera, and where it stands: structs of include/tablerig.h, which describes the fields. */
package tablerig;

import com.sun.jna.Structure.FieldOrder;

public final class Rig {
    private Rig() {}

    @FieldOrder({
        "has_rated_load_kg", "has_rated_moment_n_m", "mass_kg", "pivot_below_socket_mm", "rated_load_kg",
        "rated_moment_n_m"
    })
    public static class Head extends Struct {
        public int has_rated_load_kg, has_rated_moment_n_m;
        public double mass_kg, pivot_below_socket_mm, rated_load_kg, rated_moment_n_m;
    }

    @FieldOrder({"mass_kg", "out_mm", "direction_deg", "height_mm"})
    public static class Sandbag extends Struct {
        public double mass_kg, out_mm, direction_deg, height_mm;
    }

    @FieldOrder({
        "kind", "reserved", "bending_stiffness_n_m2", "tube_outside_mm", "tube_inside_mm",
        "tube_modulus_n_per_mm2"
    })
    public static class Stiffness extends Struct {
        public int kind, reserved;
        public double bending_stiffness_n_m2, tube_outside_mm, tube_inside_mm, tube_modulus_n_per_mm2;
    }

    @FieldOrder({
        "has_counterweight_out_mm", "has_damping_ratio", "has_rated_load_kg", "has_rated_clamp_moment_n_m",
        "longest_reach_mm", "tail_mm", "mass_kg", "pitch_deg", "counterweight_kg", "counterweight_out_mm",
        "damping_ratio", "rated_load_kg", "rated_clamp_moment_n_m", "stiffness"
    })
    public static class Boom extends Struct {
        public int has_counterweight_out_mm, has_damping_ratio, has_rated_load_kg, has_rated_clamp_moment_n_m;
        public double longest_reach_mm, tail_mm, mass_kg, pitch_deg, counterweight_kg, counterweight_out_mm,
            damping_ratio, rated_load_kg, rated_clamp_moment_n_m;
        public Stiffness stiffness;
    }

    @FieldOrder({
        "size", "leg_count", "has_first_leg_deg", "has_rated_load_kg", "has_boom", "reserved",
        "lowest_pivot_mm", "highest_pivot_mm", "column_radius_mm", "foot_radius_mm", "legs_top_mm",
        "mass_kg", "centre_height_mm", "head", "table_clearance_mm", "base_mass_kg", "base_height_mm",
        "first_leg_deg", "rated_load_kg", "sandbags", "boom"
    })
    public static class Support extends Struct {
        public int size, leg_count, has_first_leg_deg, has_rated_load_kg, has_boom, reserved;
        public double lowest_pivot_mm, highest_pivot_mm, column_radius_mm, foot_radius_mm, legs_top_mm,
            mass_kg, centre_height_mm;
        public Head head;
        public double table_clearance_mm, base_mass_kg, base_height_mm, first_leg_deg, rated_load_kg;
        public Sandbag[] sandbags = (Sandbag[]) new Sandbag().toArray(4);
        public Boom boom;
    }

    @FieldOrder({
        "boom_used", "side", "has_tail_end", "leg_count", "column", "towards", "stand_off_mm", "reach_mm",
        "reach_from_sides_mm", "boom_length_mm", "clamp_height_mm", "tail_end", "first_leg_deg", "feet",
        "highest_point_mm"
    })
    public static class Placement extends Struct {
        public int boom_used, side, has_tail_end, leg_count;
        public Room.FloorPoint column;
        public Room.Direction towards;
        public double stand_off_mm, reach_mm;
        public double[] reach_from_sides_mm = new double[4];
        public double boom_length_mm, clamp_height_mm;
        public Room.Point tail_end;
        public double first_leg_deg;
        public Room.FloorPoint[] feet = (Room.FloorPoint[]) new Room.FloorPoint().toArray(8);
        public double highest_point_mm;
    }

    @FieldOrder({"feet_mm", "tail_mm", "camera_mm", "ceiling_mm", "behind_camera_mm"})
    public static class BayRoom extends Struct {
        public double feet_mm, tail_mm, camera_mm, ceiling_mm, behind_camera_mm;
    }

    @FieldOrder({"column_mm", "boom_mm"})
    public static class SupportInPicture extends Struct {
        public double column_mm, boom_mm;
    }

    @FieldOrder({"mass_kg", "centre_ahead_mm", "centre", "head_moment_n_m"})
    public static class Payload extends Struct {
        public double mass_kg, centre_ahead_mm;
        public Room.Point centre;
        public double head_moment_n_m;
    }
}
