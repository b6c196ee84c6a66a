/* What stands in the room, and places in it: structs of include/tablerig.h, which describes the fields. */
package tablerig;

import com.sun.jna.Structure.FieldOrder;

public final class Room {
    private Room() {}

    @FieldOrder({"size", "underside", "width_mm", "depth_mm", "height_mm"})
    public static class Table extends Struct {
        public int size, underside;
        public double width_mm, depth_mm, height_mm;
    }

    @FieldOrder({"inside_diameter_mm", "contents_below_rim_mm"})
    public static class Vessel extends Struct {
        public double inside_diameter_mm, contents_below_rim_mm;
    }

    @FieldOrder({
        "size", "shape", "judged_by", "has_vessel", "width_mm", "depth_mm", "diameter_mm", "height_mm",
        "vessel"
    })
    public static class Subject extends Struct {
        public int size, shape, judged_by, has_vessel;
        public double width_mm, depth_mm, diameter_mm, height_mm;
        public Vessel vessel;
    }

    @FieldOrder({
        "size", "has_left_mm", "has_right_mm", "has_front_mm", "has_back_mm", "has_ceiling_mm",
        "public_passes", "people_under", "left_mm", "right_mm", "front_mm", "back_mm", "ceiling_mm",
        "ceiling_clearance_mm", "person_room_mm", "floor_slope_percent"
    })
    public static class Bay extends Struct {
        public int size, has_left_mm, has_right_mm, has_front_mm, has_back_mm, has_ceiling_mm, public_passes,
            people_under;
        public double left_mm, right_mm, front_mm, back_mm, ceiling_mm, ceiling_clearance_mm, person_room_mm,
            floor_slope_percent;
    }

    @FieldOrder({"x_mm", "y_mm", "z_mm"})
    public static class Point extends Struct {
        public double x_mm, y_mm, z_mm;
    }

    @FieldOrder({"x", "y", "z"})
    public static class Direction extends Struct {
        public double x, y, z;
    }

    @FieldOrder({"x_mm", "y_mm"})
    public static class FloorPoint extends Struct {
        public double x_mm, y_mm;
    }
}
