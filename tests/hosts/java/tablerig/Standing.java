/* How the rig stands, and how it bends: structs of include/tablerig.h, which describes the fields. */
package tablerig;

import com.sun.jna.Structure.FieldOrder;

public final class Standing {
    private Standing() {}

    @FieldOrder({
        "margin_edge", "factor_edge", "total_mass_kg", "centre", "margin_mm", "factor",
        "factor_edge_direction_deg", "restoring_moment_n_m", "overturning_moment_n_m", "tilt_to_tip_deg",
        "push_to_tip_n", "clamp_moment_n_m"
    })
    public static class State extends Struct {
        public int margin_edge, factor_edge;
        public double total_mass_kg;
        public Room.Point centre;
        public double margin_mm, factor, factor_edge_direction_deg, restoring_moment_n_m,
            overturning_moment_n_m, tilt_to_tip_deg, push_to_tip_n, clamp_moment_n_m;
    }

    @FieldOrder({"as_shot", "camera_off", "counterweight_off", "payload_to_tip_kg", "payload_share"})
    public static class Stability extends Struct {
        public State as_shot, camera_off, counterweight_off;
        public double payload_to_tip_kg, payload_share;
    }

    @FieldOrder({
        "has_counterweight_to_balance_kg", "has_longest_reach_mm", "counterweight_to_balance_kg",
        "base_to_add_kg", "longest_reach_mm", "best_first_leg_deg", "best_margin_mm", "worst_first_leg_deg",
        "worst_margin_mm"
    })
    public static class Ballast extends Struct {
        public int has_counterweight_to_balance_kg, has_longest_reach_mm;
        public double counterweight_to_balance_kg, base_to_add_kg, longest_reach_mm, best_first_leg_deg,
            best_margin_mm, worst_first_leg_deg, worst_margin_mm;
    }

    @FieldOrder({
        "has_settling_s", "reserved", "deflection_mm", "height_lost_mm", "end_slope_deg", "aim_shift_mm",
        "frequency_hz", "settling_s"
    })
    public static class Sag extends Struct {
        public int has_settling_s, reserved;
        public double deflection_mm, height_lost_mm, end_slope_deg, aim_shift_mm, frequency_hz, settling_s;
    }
}
