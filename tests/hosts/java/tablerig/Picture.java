/* The camera's place and what the picture shows: structs of include/tablerig.h, which describes the fields. */
package tablerig;

import com.sun.jna.Structure.FieldOrder;

public final class Picture {
    private Picture() {}

    @FieldOrder({
        "has_front_clearance_mm", "reserved", "forward", "right", "up", "aim", "pupil", "sensor", "socket",
        "pivot", "body_top_mm", "sensor_from_aim_mm", "pivot_from_aim_mm", "sensor_from_edge_mm",
        "pivot_from_edge_mm", "front_clearance_mm"
    })
    public static class Pose extends Struct {
        public int has_front_clearance_mm, reserved;
        public Room.Direction forward, right, up;
        public Room.Point aim, pupil, sensor, socket, pivot;
        public double body_top_mm, sensor_from_aim_mm, pivot_from_aim_mm, sensor_from_edge_mm,
            pivot_from_edge_mm, front_clearance_mm;
    }

    @FieldOrder({"pose", "pupil_distance_mm", "frame_width_mm", "frame_height_mm"})
    public static class View extends Struct {
        public Pose pose;
        public double pupil_distance_mm, frame_width_mm, frame_height_mm;
    }

    @FieldOrder({"right_mm", "up_mm"})
    public static class PicturePoint extends Struct {
        public double right_mm, up_mm;
    }

    @FieldOrder({"width_mm", "depth_mm", "centre", "turned_deg"})
    public static class Board extends Struct {
        public double width_mm, depth_mm;
        public Room.FloorPoint centre;
        public double turned_deg;
    }

    @FieldOrder({
        "has_corners", "edges_in_frame", "has_near_width_mm", "has_far_width_mm", "has_keystone_ratio",
        "has_depth_mm", "from_below", "has_table_share", "has_board", "reserved", "corners",
        "near_width_mm", "far_width_mm", "keystone_ratio", "depth_mm", "table_share", "board"
    })
    public static class Footprint extends Struct {
        public int[] has_corners = new int[4];
        public int[] edges_in_frame = new int[4];
        public int has_near_width_mm, has_far_width_mm, has_keystone_ratio, has_depth_mm, from_below,
            has_table_share, has_board, reserved;
        public Room.FloorPoint[] corners = (Room.FloorPoint[]) new Room.FloorPoint().toArray(4);
        public double near_width_mm, far_width_mm, keystone_ratio, depth_mm, table_share;
        public Board board;
    }

    @FieldOrder({"behind_mm", "width_mm", "height_mm", "share"})
    public static class Backdrop extends Struct {
        public double behind_mm, width_mm, height_mm, share;
    }

    @FieldOrder({
        "left_mm", "right_mm", "bottom_mm", "top_mm", "fill_width", "fill_height", "room_above_mm",
        "room_below_mm", "room_left_mm", "room_right_mm"
    })
    public static class Outline extends Struct {
        public double left_mm, right_mm, bottom_mm, top_mm, fill_width, fill_height, room_above_mm,
            room_below_mm, room_left_mm, room_right_mm;
    }

    @FieldOrder({"has_contents", "has_contents_from_far", "top", "side", "contents", "contents_from_far"})
    public static class Shares extends Struct {
        public int has_contents, has_contents_from_far;
        public double top, side, contents, contents_from_far;
    }

    @FieldOrder({
        "has_size_ratio", "has_convergence", "side_stretch", "corner_stretch", "size_ratio", "convergence"
    })
    public static class Perspective extends Struct {
        public int has_size_ratio, has_convergence;
        public double side_stretch, corner_stretch, size_ratio, convergence;
    }
}
