/* Plans two shots of an invented preserves-and-pottery catalogue in a rented bay through JNA, and prints their
 * cautions; the gear is invented too. Exits with 1 if a figure is not the known one. On Android the same code
 * runs with JNA's Android package and a libtablerig.so per processor. */
import static tablerig.Tablerig.LIBRARY;

import tablerig.Code;
import tablerig.Optics;
import tablerig.Planned;
import tablerig.Rig;
import tablerig.Room;

public final class PlanShots {
    private static int wrong;

    private static Optics.Camera camera() {
        Optics.Camera camera = new Optics.Camera();
        LIBRARY.tablerig_camera_init(camera, camera.size());
        camera.sensor_width_mm = 36;
        camera.sensor_height_mm = 24;
        camera.socket_ahead_mm = 30;
        camera.socket_below_mm = 45;
        camera.body_above_mm = 60;
        camera.mass_kg = 0.7;
        return camera;
    }

    private static Optics.Lens lens() {
        Optics.Lens lens = new Optics.Lens();
        LIBRARY.tablerig_lens_init(lens, lens.size());
        lens.focal_length_mm = 90;
        lens.least_f_number = 2.8;
        lens.most_f_number = 22;
        lens.mass_kg = 0.6;
        lens.centre_ahead_mm = 70;
        return lens;
    }

    private static Room.Table table() {
        Room.Table table = new Room.Table();
        LIBRARY.tablerig_table_init(table, table.size());
        table.width_mm = 1200;
        table.depth_mm = 800;
        table.height_mm = 760;
        return table;
    }

    private static Room.Subject plate() {
        Room.Subject plate = new Room.Subject();
        LIBRARY.tablerig_subject_init(plate, plate.size());
        plate.shape = Code.SHAPE_ROUND;
        plate.diameter_mm = 200;
        plate.height_mm = 0;
        return plate;
    }

    private static Rig.Support stand() {
        Rig.Support stand = new Rig.Support();
        LIBRARY.tablerig_support_init(stand, stand.size());
        stand.leg_count = 3;
        stand.lowest_pivot_mm = 900;
        stand.highest_pivot_mm = 3000;
        stand.column_radius_mm = 20;
        stand.foot_radius_mm = 500;
        stand.legs_top_mm = 900;
        stand.mass_kg = 7;
        stand.centre_height_mm = 600;
        stand.base_mass_kg = 10;
        stand.head.mass_kg = 0.5;
        stand.head.pivot_below_socket_mm = 90;
        stand.has_boom = 1;
        stand.boom.longest_reach_mm = 400;
        stand.boom.tail_mm = 500;
        stand.boom.mass_kg = 1.6;
        stand.boom.counterweight_kg = 4;
        return stand;
    }

    /** The plan; the fault says what was refused where it is null. */
    private static Planned.Plan plan(Planned.Shot shot, Rig.Support stand, Planned.Fault fault) {
        Planned.Brief brief = new Planned.Brief();
        LIBRARY.tablerig_brief_init(brief, brief.size());
        brief.shot = shot.pointer();
        brief.camera = camera().pointer();
        brief.lens = lens().pointer();
        brief.table = table().pointer();
        brief.subject = plate().pointer();
        brief.support = stand.pointer();
        Planned.Plan plan = new Planned.Plan();
        LIBRARY.tablerig_plan_init(plan, plan.size());
        return LIBRARY.tablerig_plan(brief, plan, fault) == Code.STATUS_OK ? plan : null;
    }

    private static void print(Planned.Plan plan) {
        for (int i = 0; i < plan.caution_count; i++) {
            Planned.Caution caution = plan.cautions[i];
            System.out.printf("%s: %s (%.4g, limit %.4g %s)%n",
                    LIBRARY.tablerig_level_text(caution.level), LIBRARY.tablerig_caution_text(caution.code),
                    caution.value, caution.limit, LIBRARY.tablerig_caution_unit(caution.code));
        }
        for (int i = 0; plan.overhead == 1 && LIBRARY.tablerig_overhead_caution(i) != null; i++) {
            System.out.println("- " + LIBRARY.tablerig_overhead_caution(i));
        }
        System.out.printf("Pivot %.1f mm above the floor, reach %.0f mm, factor %.2f as shot.%n",
                plan.pose.pivot.z_mm, plan.placement.reach_mm, plan.stability.as_shot.factor);
        System.out.println(LIBRARY.tablerig_removal_text(plan.removal));
    }

    /** How weighty a caution of the plan is; 0 where it has none of that code. */
    private static int level(Planned.Plan plan, int code) {
        for (int i = 0; i < plan.caution_count; i++) {
            if (plan.cautions[i].code == code) {
                return plan.cautions[i].level;
            }
        }
        return 0;
    }

    private static void expect(boolean holds, String what) {
        if (!holds) {
            System.err.println("not so: " + what);
            wrong = 1;
        }
    }

    public static void main(String[] arguments) {
        Planned.Shot shot = new Planned.Shot();
        LIBRARY.tablerig_shot_init(shot, shot.size());
        shot.elevation_deg = 90;
        shot.frame_width_mm = 600;
        Rig.Support stand = stand();
        Planned.Fault fault = new Planned.Fault();
        Planned.Plan plan = plan(shot, stand, fault);
        print(plan);
        // Half a unit of the last digit given.
        expect(Math.abs(plan.pose.pivot.z_mm - 2415.4) < 0.05, "the pivot is 2415.4 mm up");
        expect(level(plan, Code.CAUTION_CODE_LOAD_OVERHEAD) == Code.LEVEL_NOTE, "a load overhead is told");
        expect(level(plan, Code.CAUTION_CODE_BOOM_TOO_SHORT) == 0, "the boom reaches");
        stand.boom.longest_reach_mm = 250;
        plan = plan(shot, stand, fault);
        print(plan);
        expect(level(plan, Code.CAUTION_CODE_BOOM_TOO_SHORT) == Code.LEVEL_STOP, "a shorter one does not");
        shot.elevation_deg = 91;
        expect(plan(shot, stand, fault) == null, "an elevation past the vertical is refused");
        expect("shot.elevation_deg".equals(fault.field) && fault.most == 90, "and named");
        System.out.printf("%s = %s %s%n", fault.field, fault.value, LIBRARY.tablerig_status_text(fault.status));
        System.exit(wrong);
    }
}
