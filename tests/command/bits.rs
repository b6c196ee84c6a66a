//! The command's JSON is the library's plan, bit for bit; and TOML and JSON are two ways to say the same.

use serde_json::{Map, Value, json};
use toml::de::{DeTable, DeValue};

use tablerig::brief::{Brief, Criteria, Framing, Shot};
use tablerig::caution::Level;
use tablerig::optics::camera::Camera;
use tablerig::optics::lens::Lens;
use tablerig::optics::sensor::Aspect;
use tablerig::plan::plan;
use tablerig::rig::support::{Boom, Head, Sandbag, Stiffness, Support};
use tablerig::scene::bay::Bay;
use tablerig::scene::subject::{JudgedBy, Shape, Subject, Vessel};
use tablerig::scene::table::{Table, Underside};

use super::run::{demo, run, run_with};

fn parsed(text: &str) -> Value {
    serde_json::from_str(text).expect("it is JSON")
}

/// The demo's shot of the soup, written down again without the file.
fn soup() -> Brief {
    Brief {
        shot: Shot {
            framing: Framing::FrameWidthMm(330.2),
            delivered_aspect: Some(Aspect { width: 1.0, height: 1.0 }),
            ..Shot::new(60.0, 330.2)
        },
        camera: Camera {
            sensor_width_mm: 36.0,
            sensor_height_mm: 24.0,
            circle_of_confusion_mm: None,
            socket_ahead_mm: 12.0,
            socket_below_mm: 42.0,
            body_above_mm: 58.0,
            body_behind_mm: 34.0,
            mass_kg: 0.74,
            centre_ahead_mm: 8.0,
        },
        lens: Lens {
            focal_length_mm: 100.0,
            closest_focus_mm: Some(300.0),
            largest_magnification: Some(1.0),
            pupil_ratio: 1.0,
            principal_separation_mm: 0.0,
            least_f_number: 2.8,
            most_f_number: 32.0,
            front_from_sensor_mm: Some(150.0),
            largest_tilt_deg: 0.0,
            mass_kg: 0.64,
            centre_ahead_mm: 80.0,
        },
        table: Table { width_mm: 1400.0, depth_mm: 800.0, height_mm: 760.0, underside: Underside::Open },
        subject: Subject {
            shape: Shape::Round { diameter_mm: 190.0 },
            height_mm: 85.0,
            vessel: Some(Vessel { inside_diameter_mm: 178.0, contents_below_rim_mm: 22.0 }),
            judged_by: JudgedBy::Contents,
        },
        support: Support {
            lowest_pivot_mm: 1100.0,
            highest_pivot_mm: 2600.0,
            column_radius_mm: 18.0,
            leg_count: 3,
            foot_radius_mm: 500.0,
            legs_top_mm: 700.0,
            first_leg_deg: None,
            table_clearance_mm: 30.0,
            mass_kg: 6.5,
            centre_height_mm: 700.0,
            base_mass_kg: 0.0,
            base_height_mm: 0.0,
            sandbags: [
                Sandbag { mass_kg: 11.0, out_mm: 0.0, direction_deg: 0.0, height_mm: 250.0 },
                Sandbag { mass_kg: 7.0, out_mm: 100.0, direction_deg: 180.0, height_mm: 250.0 },
                Sandbag::NONE,
                Sandbag::NONE,
            ],
            rated_load_kg: Some(20.0),
            head: Head {
                mass_kg: 0.5,
                pivot_below_socket_mm: 90.0,
                rated_load_kg: Some(6.0),
                rated_moment_n_m: Some(9.0),
            },
            boom: Some(Boom {
                longest_reach_mm: 1100.0,
                tail_mm: 550.0,
                mass_kg: 1.6,
                pitch_deg: 0.0,
                counterweight_kg: 1.5,
                counterweight_out_mm: None,
                stiffness: Some(Stiffness::Tube {
                    tube_outside_mm: 40.0,
                    tube_inside_mm: 35.0,
                    tube_modulus_n_per_mm2: 69000.0,
                }),
                damping_ratio: Some(0.02),
                rated_load_kg: Some(5.0),
                rated_clamp_moment_n_m: Some(30.0),
            }),
        },
        bay: Bay {
            left_mm: Some(2600.0),
            right_mm: Some(3100.0),
            front_mm: Some(3400.0),
            back_mm: Some(2200.0),
            ceiling_mm: Some(2743.2),
            ceiling_clearance_mm: 50.0,
            person_room_mm: 600.0,
            floor_slope_percent: 0.5,
            ..Bay::OPEN
        },
        criteria: Criteria::DEFAULT,
    }
}

#[test]
fn json_is_the_librarys_plan() {
    let told = parsed(&run(&["shot", "soup", "--json"]).out);
    let brief = soup();
    let plan = plan(&brief).expect("the demo's briefs are in range");
    assert_eq!(told["brief"], json!(brief));
    assert_eq!(told["plan"], json!(plan));
    assert_eq!(told["can_be_rigged"], json!(plan.cautions.worst() != Some(Level::Stop)));
    // Written and read, a number is the same number.
    let distance = told["plan"]["lens"]["sensor_distance_mm"].as_f64().expect("a number");
    assert_eq!(distance.to_bits(), plan.lens.sensor_distance_mm.to_bits());
}

#[test]
fn shot_and_plan_tell_the_same() {
    let all = parsed(&run(&["plan", "--json"]).out);
    let shots = all["shots"].as_array().expect("a list");
    assert_eq!(shots.len(), 11);
    for shot in shots {
        let name = shot["name"].as_str().expect("a name");
        let one = parsed(&run(&["shot", name, "--json"]).out);
        assert_eq!((&one["brief"], &one["plan"]), (&shot["brief"], &shot["plan"]), "{name}");
    }
}

fn table(table: &DeTable<'_>) -> Value {
    let entries = table.iter().map(|(key, value)| (key.get_ref().to_string(), value_of(value.get_ref())));
    Value::Object(entries.collect::<Map<_, _>>())
}

fn value_of(value: &DeValue<'_>) -> Value {
    match value {
        DeValue::String(text) => json!(text),
        DeValue::Integer(number) => json!(number.as_str().parse::<i64>().expect("a whole number")),
        DeValue::Float(number) => json!(number.as_str().parse::<f64>().expect("a number")),
        DeValue::Boolean(flag) => json!(flag),
        DeValue::Datetime(_) => panic!("the demo has no dates"),
        DeValue::Array(list) => list.iter().map(|item| value_of(item.get_ref())).collect(),
        DeValue::Table(inner) => table(inner),
    }
}

#[test]
fn toml_and_json_are_the_same() {
    let toml = demo();
    let json = table(DeTable::parse(&toml).expect("the demo is TOML").get_ref()).to_string();
    for arguments in [&["plan", "-"][..], &["plan", "-", "--json"], &["shot", "glaze", "-"]] {
        let (a, b) = (run_with(arguments, &toml), run_with(arguments, &json));
        assert_eq!((a.status, a.out), (b.status, b.out), "{arguments:?}");
    }
}

/// What a key is when left out, `tablerig fields` says; written down, it changes nothing.
#[test]
fn defaults_are_what_the_list_says() {
    let toml = demo();
    let fields = parsed(&run(&["fields", "criteria", "--json"]).out);
    let mut written = String::from("\n[criteria]\n");
    for row in fields["sections"][0]["keys"].as_array().expect("a list") {
        let (key, value) =
            (row["key"].as_str().expect("a key"), row["otherwise"].as_str().expect("a default"));
        written.push_str(&format!("{key} = {value}\n"));
    }
    let shot = "\nbearing_deg = 0\nhold = \"across\"\naim_x_mm = 0\naim_y_mm = 0\nlight_clearance_mm = 100\n\
                stack_overlap = 0.3\nelevation_tolerance_deg = 1\nframe_width_tolerance = 0.02\n\
                roll_tolerance_deg = 0.5\nfocus_on_table = false";
    let full = toml.replacen("name = \"soup\"", &format!("name = \"soup\"{shot}"), 1) + &written;
    let full = full.replacen("leg_count = 3", "base_mass_kg = 0\nbase_height_mm = 0\nleg_count = 3", 1);
    let arguments = ["shot", "soup", "-", "--json"];
    let (given, left_out) = (run_with(&arguments, &full), run_with(&arguments, &toml));
    assert_eq!(given.err, "");
    assert_eq!(given.out, left_out.out);
}
