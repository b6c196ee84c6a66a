/* The functions of include/tablerig.h that this package's users need; others are added in the same way. */
package tablerig;

import com.sun.jna.Library;
import com.sun.jna.Native;
import com.sun.jna.ptr.DoubleByReference;

/**
 * The library itself, found by its name along jna.library.path, the system's library path, or in an Android
 * package. Any function may be called from any thread.
 */
public interface Tablerig extends Library {
    Tablerig LIBRARY = Native.load("tablerig", Tablerig.class);

    String tablerig_version_text();

    int tablerig_shot_init(Planned.Shot shot, int size);

    int tablerig_camera_init(Optics.Camera camera, int size);

    int tablerig_lens_init(Optics.Lens lens, int size);

    int tablerig_table_init(Room.Table table, int size);

    int tablerig_subject_init(Room.Subject subject, int size);

    int tablerig_support_init(Rig.Support support, int size);

    int tablerig_bay_init(Room.Bay bay, int size);

    int tablerig_criteria_init(Planned.Criteria criteria, int size);

    int tablerig_brief_init(Planned.Brief brief, int size);

    int tablerig_plan_init(Planned.Plan plan, int size);

    int tablerig_plan(Planned.Brief brief, Planned.Plan plan, Planned.Fault fault);

    int tablerig_advice(
            Room.Subject subject, double bearing_deg, Planned.Advice advice, Planned.Fault fault);

    int tablerig_project(
            Picture.View view, Room.Point place, Picture.PicturePoint picture, Planned.Fault fault);

    int tablerig_focal_length_for(
            double pupil_distance_mm,
            double frame_width_mm,
            double used_width_mm,
            double pupil_ratio,
            DoubleByReference focal_length_mm,
            Planned.Fault fault);

    String tablerig_status_text(int status);

    String tablerig_caution_text(int code);

    String tablerig_caution_unit(int code);

    String tablerig_level_text(int level);

    String tablerig_removal_text(int removal);

    String tablerig_advice_reason_text(int reason);

    String tablerig_overhead_caution(int index);
}
