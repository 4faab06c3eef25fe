//! The trunk with a person at work, and the cut.

use super::{crowded_in, kept};
use crate::answer::ring::drawing::{CutLabels, Trunk, TrunkLabels, cut, trunk};
use crate::words::m;
use crate::words::message::{pack, take_all, within};

/// Stems from 2 to 120 in.
fn stems() -> Vec<Trunk> {
    let mut all = Vec::new();
    for inches in [
        2.0, 3.0, 5.0, 9.0, 14.5, 22.0, 26.0, 30.0, 40.0, 60.0, 120.0,
    ] {
        let dbh_mm: f64 = inches * 25.4;
        for share in [0.01, 0.045, 0.12] {
            for (at_least_mm, better_mm) in [
                (150.0, dbh_mm.clamp(150.0, 500.0)),
                (254.0, 254.0),
                (254.0, 500.0),
            ] {
                all.push(Trunk {
                    dbh_mm,
                    bark_mm: dbh_mm * share,
                    at_least_mm,
                    better_mm,
                });
            }
        }
    }
    all
}

/// Draws with the words of the language in use, the longest readings that a trunk has.
fn draw(out: &mut dyn crate::out::Out, t: &Trunk) {
    let labels = TrunkLabels {
        aria: "trunk",
        bare: &m::RING_BARE,
        across: &m::ring_trunk_across("120½ in"),
        at_least: ["10½ in", &m::RING_AT_LEAST],
        better: ["19½ in", "50 cm"],
        up: [&m::ring_up("4½ ft"), &m::ring_up("0.9 m")],
        person: "5 ft 7 in",
    };
    trunk(out, t, &labels);
}

#[test]
fn person_trunk_and_ring_are_at_one_scale() {
    for t in stems() {
        let px = t.scale();
        let all = kept(|out| draw(out, &t));
        let bare = all
            .iter()
            .find(|d| d.tag == "rect" && d.has("fwood"))
            .unwrap();
        let bark = (t.bark_mm * px).min(t.dbh_mm * px * 0.45);
        let wide = bare.n("width") + 2.0 * bark;
        assert!((wide - t.dbh_mm * px).abs() < 0.2, "{t:?} {wide}");
        let high = bare.n("height");
        assert!((high - t.better_mm * px).abs() < 0.2, "{t:?} {high}");
        // The person, hat and all, is 359 high where a millimetre has 0.2072 px: 1733 mm, 5 ft 7 in and a hat.
        let moved = all.iter().find(|d| d.tag == "g").unwrap().get("transform");
        let k: f64 = moved
            .rsplit_once('(')
            .and_then(|(_, k)| k.trim_end_matches(')').parse().ok())
            .unwrap();
        let person_mm = 359.0 * k / px;
        assert!((person_mm - 1733.0).abs() < 8.0, "{t:?} {person_mm}");
        let view: Vec<f64> = all[0]
            .get("viewBox")
            .split(' ')
            .map(|n| n.parse().unwrap())
            .collect();
        assert!(view[2] == 366.0 && view[3] < 420.0, "{view:?}");
        assert!(bare.n("x") + bare.n("width") + bark < 366.0 - 90.0, "{t:?}");
    }
}

#[test]
fn the_ring_lies_between_the_two_heights_as_far_as_it_can() {
    for t in stems() {
        let all = kept(|out| draw(out, &t));
        let bare = all
            .iter()
            .find(|d| d.tag == "rect" && d.has("fwood"))
            .unwrap();
        let ground = {
            let line = all
                .iter()
                .rfind(|d| d.has("s") && d.get("d").starts_with("M0 "));
            let d = line.unwrap().get("d");
            d[3..d.find('L').unwrap()].parse::<f64>().unwrap()
        };
        let px = t.scale();
        let top = (ground - bare.n("y")) / px;
        let foot = (ground - bare.n("y") - bare.n("height")) / px;
        assert!(top <= 4.5 * 304.8 + 2.0, "{t:?} {top}");
        // 500 mm, the widest, begins 4½ ft up and ends 2 in under 3 ft.
        assert!(foot >= 3.0 * 304.8 - 50.0, "{t:?} {foot}");
    }
}

#[test]
fn labels_of_the_trunk_stay_apart_in_every_language_and_in_larger_letters() {
    take_all();
    for language in ["en", "es", "qps"] {
        within(pack(language), || {
            for t in stems() {
                let all = kept(|out| draw(out, &t));
                // 1.2: on paper and beside a narrow column letters are so much larger against the drawing.
                for larger in [1.0, 1.2] {
                    let found = crowded_in(&all, larger);
                    assert!(found.is_empty(), "{language} {larger} {t:?}: {found:?}");
                }
            }
        });
    }
}

#[test]
fn labels_of_the_cut_stay_apart_in_every_language() {
    take_all();
    for language in ["en", "es", "qps"] {
        within(pack(language), || {
            let all = kept(|out| {
                let labels = CutLabels {
                    aria: "cut",
                    bark: &m::RING_BARK,
                    bark_size: &m::ring_cut_bark("1½ in"),
                    bare: &m::RING_CUT_BARE,
                    wood: &m::RING_CUT_WOOD,
                };
                cut(out, &labels);
            });
            for larger in [1.0, 1.2] {
                let found = crowded_in(&all, larger);
                assert!(found.is_empty(), "{language} {larger}: {found:?}");
            }
        });
    }
}
