//! Briefs drawn from bytes, over everything that a brief can say, leaning towards trouble.

use tablerig::brief::{Brief, Criteria, Framing, Shot};
use tablerig::optics::camera::Camera;
use tablerig::optics::sensor::{Aspect, Hold};
use tablerig::range;
use tablerig::scene::bay::Bay;
use tablerig::scene::subject::{JudgedBy, Shape, Subject, Vessel};
use tablerig::scene::table::{Side, Table, Underside};

use super::draw::Draw;
use super::gear;
use super::workshop;

/// A brief; each field within its range, some contradicting each other.
pub(crate) fn brief(of: &mut Draw) -> Brief {
    Brief {
        shot: shot(of),
        camera: camera(of),
        lens: gear::lens(of),
        table: table(of),
        subject: subject(of),
        support: gear::support(of),
        bay: bay(of),
        criteria: criteria(of),
    }
}

pub(crate) fn shot(of: &mut Draw) -> Shot {
    let steep = [90.0, 45.0, 0.0, -60.0, 89.999_999, 1e-9, 15.0];
    let elevation_deg = match of.below(4) {
        0 => of.one_of(&steep),
        1 => of.near(range::ELEVATION_DEG, 30.0),
        _ => of.between(-60.0, 90.0),
    };
    let width = of.near(range::FRAME_WIDTH_MM, 600.0);
    let framing = match of.below(6) {
        4 => Framing::FillWidth(of.near(range::FILL_WIDTH, 0.6)),
        5 => Framing::FillHeight(of.near(range::FILL_HEIGHT, 0.6)),
        _ => Framing::FrameWidthMm(width),
    };
    let delivered_aspect = if of.yes() {
        Some(Aspect { width: of.near(range::ASPECT_SIDE, 4.0), height: of.near(range::ASPECT_SIDE, 5.0) })
    } else {
        None
    };
    Shot {
        framing,
        bearing_deg: of.near_one_of(range::BEARING_DEG, &[0.0, 90.0, -30.0, 200.0]),
        hold: of.one_of(&[Hold::Across, Hold::Upright]),
        delivered_aspect,
        aim_x_mm: of.near_one_of(range::AIM_X_MM, &[0.0, 100.0, -400.0]),
        aim_y_mm: of.near_one_of(range::AIM_Y_MM, &[0.0, -100.0, 300.0]),
        aim_height_mm: of.maybe(range::AIM_HEIGHT_MM, 50.0),
        f_number: of.maybe(range::F_NUMBER, 8.0),
        focus_on_table: of.yes(),
        backdrop_behind_mm: of.maybe(range::BACKDROP_BEHIND_MM, 800.0),
        side: of.one_of(&[None, Some(Side::Front), Some(Side::Right), Some(Side::Back), Some(Side::Left)]),
        light_clearance_mm: of.near(range::LIGHT_CLEARANCE_MM, 100.0),
        stack_overlap: of.near(range::STACK_OVERLAP, 0.3),
        elevation_tolerance_deg: of.near(range::ELEVATION_TOLERANCE_DEG, 1.0),
        frame_width_tolerance: of.near(range::FRAME_WIDTH_TOLERANCE, 0.02),
        roll_tolerance_deg: of.near(range::ROLL_TOLERANCE_DEG, 0.5),
        ..Shot::new(elevation_deg, width)
    }
}

pub(crate) fn camera(of: &mut Draw) -> Camera {
    Camera {
        sensor_width_mm: of.near(range::SENSOR_WIDTH_MM, 36.0),
        sensor_height_mm: of.near(range::SENSOR_HEIGHT_MM, 24.0),
        circle_of_confusion_mm: of.maybe(range::CIRCLE_OF_CONFUSION_MM, 0.03),
        socket_ahead_mm: of.near(range::SOCKET_AHEAD_MM, 30.0),
        socket_below_mm: of.near(range::SOCKET_BELOW_MM, 45.0),
        body_above_mm: of.near(range::BODY_ABOVE_MM, 60.0),
        body_behind_mm: of.near(range::BODY_BEHIND_MM, 40.0),
        mass_kg: of.near(range::CAMERA_MASS_KG, 0.8),
        centre_ahead_mm: of.near(range::CAMERA_CENTRE_AHEAD_MM, 10.0),
    }
}

pub(crate) fn table(of: &mut Draw) -> Table {
    Table {
        width_mm: of.near(range::TABLE_WIDTH_MM, 1200.0),
        depth_mm: of.near(range::TABLE_DEPTH_MM, 800.0),
        height_mm: of.near(range::TABLE_HEIGHT_MM, 750.0),
        underside: of.one_of(&[Underside::Open, Underside::Closed]),
    }
}

pub(crate) fn subject(of: &mut Draw) -> Subject {
    let diameter_mm = of.near(range::SUBJECT_DIAMETER_MM, 120.0);
    let shape = if of.yes() {
        Shape::Round { diameter_mm }
    } else {
        Shape::Box { width_mm: of.near(range::SUBJECT_WIDTH_MM, 200.0), depth_mm: diameter_mm }
    };
    let height_mm = of.near(range::SUBJECT_HEIGHT_MM, 110.0);
    let vessel = if of.yes() {
        let contents = of.near(range::VESSEL_CONTENTS_BELOW_RIM_MM, 0.3 * height_mm);
        let inside = of.near(range::VESSEL_INSIDE_DIAMETER_MM, 0.6 * diameter_mm);
        Some(Vessel { inside_diameter_mm: inside, contents_below_rim_mm: contents })
    } else {
        None
    };
    let judged = [JudgedBy::Form, JudgedBy::TopDetail, JudgedBy::SideLayers, JudgedBy::Contents];
    Subject { shape, height_mm, vessel, judged_by: of.one_of(&judged) }
}

pub(crate) fn bay(of: &mut Draw) -> Bay {
    if of.below(3) == 0 {
        return Bay::OPEN;
    }
    Bay {
        left_mm: of.maybe(range::WALL_MM, 2500.0),
        right_mm: of.maybe(range::WALL_MM, 2500.0),
        front_mm: of.maybe(range::WALL_MM, 3000.0),
        back_mm: of.maybe(range::WALL_MM, 2500.0),
        ceiling_mm: of.maybe(range::CEILING_MM, 3000.0),
        ceiling_clearance_mm: of.near(range::CEILING_CLEARANCE_MM, 50.0),
        person_room_mm: of.near(range::PERSON_ROOM_MM, 600.0),
        floor_slope_percent: of.near(range::FLOOR_SLOPE_PERCENT, 0.8),
        public_passes: of.yes(),
        people_under: of.yes(),
    }
}

pub(crate) fn criteria(of: &mut Draw) -> Criteria {
    if of.below(3) > 0 {
        return Criteria::DEFAULT;
    }
    let usual = Criteria::DEFAULT;
    Criteria {
        payload_share_note: of.near(range::PAYLOAD_SHARE_NOTE, usual.payload_share_note),
        payload_share_warn: of.near(range::PAYLOAD_SHARE_WARN, usual.payload_share_warn),
        payload_share_stop: of.near(range::PAYLOAD_SHARE_STOP, usual.payload_share_stop),
        factor_note: of.near(range::FACTOR_NOTE, usual.factor_note),
        factor_warn: of.near(range::FACTOR_WARN, usual.factor_warn),
        factor_stop: of.near(range::FACTOR_STOP, usual.factor_stop),
        springy_frequency_hz: of.near(range::SPRINGY_FREQUENCY_HZ, usual.springy_frequency_hz),
        springy_factor_warn: of.near(range::SPRINGY_FACTOR_WARN, usual.springy_factor_warn),
        tilt_warn_deg: of.near(range::TILT_WARN_DEG, usual.tilt_warn_deg),
        tilt_stop_deg: of.near(range::TILT_STOP_DEG, usual.tilt_stop_deg),
        tilt_public_warn_deg: of.near(range::TILT_PUBLIC_WARN_DEG, usual.tilt_public_warn_deg),
        push_share_warn: of.near(range::PUSH_SHARE_WARN, usual.push_share_warn),
        push_most_n: of.near(range::PUSH_MOST_N, usual.push_most_n),
        push_height_most_mm: of.near(range::PUSH_HEIGHT_MOST_MM, usual.push_height_most_mm),
        people_rating_divisor: of.near(range::PEOPLE_RATING_DIVISOR, usual.people_rating_divisor),
        wanted_factor: of.near(range::WANTED_FACTOR, usual.wanted_factor),
        hold_as_shot: of.yes(),
        hold_camera_off: of.yes(),
        hold_counterweight_off: of.yes(),
        settled_share: of.near(range::SETTLED_SHARE, usual.settled_share),
    }
}

/// A brief that is planned, in place of one that is refused.
pub(crate) fn sound() -> Brief {
    workshop::overhead()
}
