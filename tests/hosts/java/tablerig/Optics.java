/* Camera and lens, and what they do: structs of include/tablerig.h, which describes the fields. */
package tablerig;

import com.sun.jna.Structure.FieldOrder;

public final class Optics {
    private Optics() {}

    @FieldOrder({
        "size", "has_circle_of_confusion_mm", "sensor_width_mm", "sensor_height_mm", "socket_ahead_mm",
        "socket_below_mm", "body_above_mm", "mass_kg", "body_behind_mm", "centre_ahead_mm",
        "circle_of_confusion_mm"
    })
    public static class Camera extends Struct {
        public int size, has_circle_of_confusion_mm;
        public double sensor_width_mm, sensor_height_mm, socket_ahead_mm, socket_below_mm, body_above_mm,
            mass_kg, body_behind_mm, centre_ahead_mm, circle_of_confusion_mm;
    }

    @FieldOrder({"width", "height"})
    public static class Aspect extends Struct {
        public double width, height;
    }

    @FieldOrder({"width_mm", "height_mm"})
    public static class UsedArea extends Struct {
        public double width_mm, height_mm;
    }

    @FieldOrder({
        "size", "has_closest_focus_mm", "has_largest_magnification", "has_front_from_sensor_mm",
        "focal_length_mm", "least_f_number", "most_f_number", "mass_kg", "centre_ahead_mm",
        "closest_focus_mm", "largest_magnification", "pupil_ratio", "principal_separation_mm",
        "front_from_sensor_mm", "largest_tilt_deg"
    })
    public static class Lens extends Struct {
        public int size, has_closest_focus_mm, has_largest_magnification, has_front_from_sensor_mm;
        public double focal_length_mm, least_f_number, most_f_number, mass_kg, centre_ahead_mm,
            closest_focus_mm, largest_magnification, pupil_ratio, principal_separation_mm,
            front_from_sensor_mm, largest_tilt_deg;
    }

    @FieldOrder({
        "focal_length_assumed", "reserved", "magnification", "focal_length_mm", "pupil_ratio",
        "sensor_distance_mm", "image_distance_mm", "object_distance_mm", "pupil_distance_mm"
    })
    public static class FocusedLens extends Struct {
        public int focal_length_assumed, reserved;
        public double magnification, focal_length_mm, pupil_ratio, sensor_distance_mm, image_distance_mm,
            object_distance_mm, pupil_distance_mm;
    }

    @FieldOrder({"horizontal_deg", "vertical_deg", "diagonal_deg"})
    public static class FieldAngles extends Struct {
        public double horizontal_deg, vertical_deg, diagonal_deg;
    }

    @FieldOrder({"nearest_mm", "farthest_mm"})
    public static class SubjectDepth extends Struct {
        public double nearest_mm, farthest_mm;
    }

    @FieldOrder({"near_limit_mm", "far_limit_mm", "in_front_mm", "behind_mm"})
    public static class DepthOfField extends Struct {
        public double near_limit_mm, far_limit_mm, in_front_mm, behind_mm;
    }

    @FieldOrder({"f_number", "engraved"})
    public static class ThirdStop extends Struct {
        public double f_number, engraved;
    }

    @FieldOrder({"pictures", "reserved", "f_number", "engraved", "step_mm"})
    public static class FocusStack extends Struct {
        public int pictures, reserved;
        public double f_number, engraved, step_mm;
    }

    @FieldOrder({
        "circle_of_confusion_assumed", "f_number_given", "subject_held", "has_f_number_to_hold",
        "has_stack", "reserved", "circle_of_confusion_mm", "f_number", "engraved", "depth_of_field",
        "f_number_needed", "f_number_to_hold", "effective_f_number", "exposure_loss_stops",
        "diffraction_disc_mm", "diffraction_limit_f_number", "stack"
    })
    public static class Focus extends Struct {
        public int circle_of_confusion_assumed, f_number_given, subject_held, has_f_number_to_hold, has_stack,
            reserved;
        public double circle_of_confusion_mm, f_number, engraved;
        public DepthOfField depth_of_field;
        public double f_number_needed;
        public ThirdStop f_number_to_hold;
        public double effective_f_number, exposure_loss_stops, diffraction_disc_mm,
            diffraction_limit_f_number;
        public FocusStack stack;
    }

    @FieldOrder({"has_tilt_deg", "reserved", "hinge_distance_mm", "tilt_deg"})
    public static class Tilt extends Struct {
        public int has_tilt_deg, reserved;
        public double hinge_distance_mm, tilt_deg;
    }
}
