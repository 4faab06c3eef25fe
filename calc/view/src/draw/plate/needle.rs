//! Leaves that are no blade of a broadleaf: needles, scales, grass, swords, fans, feathers.

use super::{Marks, Point, polar};
use crate::draw::pen::{D, Pen, outline};
use calc::terms::leaf::{Arrangement, Tip};

/// Needles as they stand: in a bundle from one sheath, in a tuft on a short side shoot, or one at a time.
pub(super) fn needles(pen: &mut Pen<'_>, marks: &Marks) {
    let bundle = |count: u32| -> Vec<f64> {
        let spread = 16.0;
        let middle = f64::from(count - 1) / 2.0;
        (0..count)
            .map(|i| (f64::from(i) - middle) * spread)
            .collect()
    };
    let (angles, sheath) = match marks.arrangement {
        Arrangement::Bundle2 => (bundle(2), true),
        Arrangement::Bundle3 => (bundle(3), true),
        Arrangement::Bundle5 => (bundle(5), true),
        Arrangement::Tuft => (
            (0..17).map(|i| -96.0 + 12.0 * f64::from(i)).collect(),
            false,
        ),
        _ => return single(pen, marks),
    };
    let foot = [180.0, if sheath { 300.0 } else { 236.0 }];
    let long = if sheath { 268.0 } else { 178.0 };
    let mut d = D::default();
    for angle in &angles {
        let tip = polar(foot, *angle, long);
        let bend = polar(foot, angle * 0.6, long * 0.55);
        d.add(
            "M##Q####",
            &[foot[0], foot[1], bend[0], bend[1], tip[0], tip[1]],
        );
    }
    if sheath {
        pen.path("s3", &d.0);
        pen.shape("s fwood", "M##h22l-3 -44h-16Z", &[169.0, 344.0]);
    } else {
        pen.path("s", &d.0);
        pen.shape("s fwood2", "M##h36v46h-36Z", &[162.0, 236.0]);
        pen.shape("s1", "M##h36m-36 14h36m-36 14h36", &[162.0, 245.0]);
        pen.shape("s3", "M##L##", &[60.0, 300.0, 300.0, 282.0]);
    }
}

/// Needles one at a time along a twig.
fn single(pen: &mut Pen<'_>, marks: &Marks) {
    pen.line("s3", 180.0, 356.0, 180.0, 40.0);
    let mut d = D::default();
    let blunt = matches!(marks.tip, Tip::Blunt | Tip::Notched | Tip::Rounded);
    let mut ends = D::default();
    for i in 0..16 {
        let y = 336.0 - 18.4 * f64::from(i);
        for way in [1.0, -1.0] {
            let tip = [180.0 + way * 92.0, y - 52.0];
            d.add(
                "M##Q####",
                &[180.0, y, 180.0 + way * 44.0, y - 34.0, tip[0], tip[1]],
            );
            if !blunt {
                ends.add("M##l##", &[tip[0], tip[1], way * 9.0, -3.0]);
            }
        }
    }
    d.add("M##L##", &[180.0, 40.0, 180.0, 8.0]);
    // A blunt needle is a broad stroke to its end, a sharp one runs out in a point.
    pen.path(if blunt { "s3" } else { "s" }, &d.0);
    pen.path("s1", &ends.0);
}

/// A branched spray of scales.
pub(super) fn scales(pen: &mut Pen<'_>) {
    let mut cords = D::default();
    let mut marks = D::default();
    let mut cord = |from: Point, degrees: f64, long: f64| {
        let count = (long / 13.0) as u32;
        for i in 0..count {
            let [x, y] = polar(from, degrees, 13.0 * f64::from(i));
            let left = polar([x, y], degrees - 38.0, 12.0);
            let right = polar([x, y], degrees + 38.0, 12.0);
            let top = polar([x, y], degrees, 16.0);
            cords.add(
                "M##L##L##L##Z",
                &[x, y, left[0], left[1], top[0], top[1], right[0], right[1]],
            );
            marks.add("M##L##", &[x, y, top[0], top[1]]);
        }
    };
    cord([180.0, 352.0], 0.0, 320.0);
    for (y, long) in [
        (308.0, 150.0),
        (256.0, 160.0),
        (204.0, 140.0),
        (152.0, 110.0),
        (100.0, 74.0),
    ] {
        cord([184.0, y], 46.0, long);
        cord([176.0, y - 22.0], -46.0, long);
    }
    pen.path("s1 fleaf", &cords.0);
    pen.path("s1", &marks.0);
}

/// A bamboo's: long blades from a jointed cane.
pub(super) fn grass(pen: &mut Pen<'_>) {
    pen.shape("s3", "M##L##", &[180.0, 360.0, 180.0, 60.0]);
    pen.shape("s3", "M##h16M##h16", &[172.0, 262.0, 172.0, 150.0]);
    let mut d = D::default();
    for (y, degrees, long) in [
        (262.0, 66.0, 190.0),
        (262.0, -58.0, 180.0),
        (150.0, 52.0, 190.0),
        (150.0, -66.0, 170.0),
        (60.0, 20.0, 130.0),
    ] {
        let foot = [180.0, y];
        let tip = polar(foot, degrees, long);
        let (a, b) = (
            polar(foot, degrees - 24.0, long * 0.4),
            polar(foot, degrees + 24.0, long * 0.4),
        );
        d.add(
            "M##Q####Q####Z",
            &[
                foot[0], foot[1], a[0], a[1], tip[0], tip[1], b[0], b[1], foot[0], foot[1],
            ],
        );
    }
    pen.path("s fleaf", &d.0);
}

/// A narrow leaf with straight sides, widest at `middle`, where its sides stand `spread` degrees from its own line.
fn lance(foot: Point, degrees: f64, spread: f64, middle: f64, far: f64) -> String {
    let corners = [
        foot,
        polar(foot, degrees - spread, middle),
        polar(foot, degrees, far),
        polar(foot, degrees + spread, middle),
    ];
    outline(&corners, [0.0, 0.0], 1.0)
}

/// Swords in a crown; spines along the edge where the tip is one.
pub(super) fn sword(pen: &mut Pen<'_>, marks: &Marks) {
    let foot = [180.0, 330.0];
    let mut swords = String::new();
    let mut spines = D::default();
    for degrees in [-84.0, 84.0, -62.0, 62.0, -40.0, 40.0, -20.0, 20.0, 0.0] {
        let far = 250.0 - f64::abs(degrees) * 0.9;
        swords += &lance(foot, degrees, 7.0, 120.0, far);
        if marks.tip == Tip::Spine {
            let (tip, end) = (polar(foot, degrees, far), polar(foot, degrees, far + 14.0));
            spines.add("M##L##", &[tip[0], tip[1], end[0], end[1]]);
        }
    }
    pen.path("s fleaf", &swords);
    pen.path("s3", &spines.0);
    pen.shape("s fwood2", "M##h60v34h-60Z", &[150.0, 330.0]);
}

/// A fan of a palm.
pub(super) fn fan(pen: &mut Pen<'_>) {
    let foot = [180.0, 232.0];
    let parts = (0..19).map(|i| lance(foot, -126.0 + 14.0 * f64::from(i), 7.0, 130.0, 196.0));
    pen.path("s fleaf", &parts.collect::<String>());
    pen.line("s3", 180.0, 232.0, 180.0, 364.0);
}

/// A feather of a palm.
pub(super) fn feather(pen: &mut Pen<'_>) {
    let mut parts = String::new();
    for i in 0..24 {
        let foot = [180.0, 300.0 - 11.6 * f64::from(i)];
        let long = 132.0 - (f64::from(i) - 9.0).abs() * 3.6;
        for way in [1.0, -1.0] {
            parts += &lance(foot, way * 52.0, 6.0, long * 0.5, long);
        }
    }
    pen.path("s1 fleaf", &parts);
    pen.shape("s3", "M##L##", &[180.0, 364.0, 180.0, 20.0]);
}
