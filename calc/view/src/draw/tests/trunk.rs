//! The trunk.

use super::{crowded, kept};
use crate::answer::ring::drawing::{HAND_MM, RingHeights, Trunk, TrunkLabels, trunk};
use crate::draw::Reading;

fn labels() -> TrunkLabels<'static> {
    let size = Reading {
        us: "14½ in",
        metric: "37 cm",
    };
    TrunkLabels {
        aria: "trunk",
        living_layer: ["living", "layer"],
        bark: "bark",
        bark_size: Reading {
            us: "0.6 in",
            metric: "15 mm",
        },
        wood: "wood",
        dead_bark: ["dead bark,", "leave it"],
        size,
        inch: "in",
        cm: "cm",
        bare_wood: "bare wood",
        better_too: "better: this too",
        at_least: "at least",
        at_least_size: size,
        better: "better",
        better_size: size,
        hand: "your hand",
        hand_size: "7 in, 18 cm",
    }
}

/// Stems from 2 to 60 in.
fn stems() -> Vec<Trunk> {
    let mut all = Vec::new();
    for inches in [2.0, 3.0, 5.0, 9.0, 14.5, 22.0, 40.0, 60.0] {
        for share in [0.01, 0.045, 0.12] {
            for live_share in [1.0, 0.9, 0.5, 0.1] {
                let dbh_mm: f64 = inches * 25.4;
                for ring in [
                    None,
                    Some(RingHeights {
                        at_least_mm: 150.0,
                        better_mm: dbh_mm.max(150.0),
                    }),
                    Some(RingHeights {
                        at_least_mm: 254.0,
                        better_mm: 254.0,
                    }),
                ] {
                    all.push(Trunk {
                        dbh_mm,
                        bark_mm: dbh_mm * share,
                        live_share,
                        ring,
                    });
                }
            }
        }
    }
    all
}

#[test]
fn every_part_of_the_trunk_is_at_one_scale() {
    for t in stems() {
        let px = t.scale();
        let all = kept(|out| trunk(out, &t, &labels()));
        let outer = all
            .iter()
            .filter(|d| d.tag == "circle" && d.has("fwood2"))
            .map(|d| d.n("r"))
            .fold(0.0, f64::max);
        assert!((outer * 2.0 - t.dbh_mm * px).abs() < 0.2, "{t:?} {outer}");
        let inner = all
            .iter()
            .find(|d| d.tag == "circle" && d.has("fwood"))
            .unwrap()
            .n("r");
        assert!(
            (outer - inner - (t.bark_mm * px).min(outer * 0.9)).abs() < 0.2,
            "{t:?}"
        );
        if let Some(ring) = t.ring {
            let bare = all
                .iter()
                .rfind(|d| d.tag == "rect" && d.has("fwood"))
                .unwrap();
            // Ring height over trunk width as in the stem itself.
            let drawn = bare.n("height") / (outer * 2.0);
            let real = ring.at_least_mm / t.dbh_mm;
            assert!((drawn - real).abs() < 0.02 * real, "{t:?}: {drawn} {real}");
            if let Some(added) = all.iter().find(|d| d.tag == "rect" && d.has("dash")) {
                let both = bare.n("height") + added.n("height");
                assert!((both - ring.better_mm * px).abs() < 0.2, "{t:?}");
            } else {
                assert!(ring.better_mm * px <= ring.at_least_mm * px + 1.0);
            }
        } else {
            assert!(
                all.iter()
                    .all(|d| d.text != "bare wood" && d.text != "at least")
            );
        }
        let view = all[0].get("viewBox");
        assert!(view.starts_with("0 0 372 "), "{view}");
        let tall: f64 = view[8..].parse().unwrap();
        assert!(tall < 800.0, "{t:?} is {tall} tall");
        assert!(HAND_MM * px < 120.0);
    }
}

#[test]
fn a_thin_bark_gets_an_inset_that_prints_its_factor() {
    let inset = |bark_mm| {
        let t = Trunk {
            dbh_mm: 400.0,
            bark_mm,
            live_share: 1.0,
            ring: None,
        };
        let all = kept(|out| trunk(out, &t, &labels()));
        let factor = all
            .iter()
            .find(|d| d.text.starts_with('×'))
            .map(|d| d.text.clone())?;
        let band = all
            .iter()
            .find(|d| d.tag == "rect" && d.has("fwood2"))
            .unwrap()
            .n("width");
        let f: f64 = factor[3..].parse().unwrap();
        assert!((band - bark_mm * t.scale() * f).abs() < 0.06, "{band} {f}");
        Some(f)
    };
    assert_eq!(inset(10.0), None);
    assert_eq!(inset(4.0), Some(5.0));
    assert_eq!(inset(1.0), Some(20.0));
}

#[test]
fn dead_bark_is_marked_only_where_there_is_some() {
    for (live_share, marked) in [(1.0, false), (0.8, true), (0.3, true)] {
        let t = Trunk {
            dbh_mm: 300.0,
            bark_mm: 15.0,
            live_share,
            ring: None,
        };
        let all = kept(|out| trunk(out, &t, &labels()));
        assert_eq!(all.iter().any(|d| d.text == "leave it"), marked);
        // The living line runs all round only on a stem that lives all round.
        assert_eq!(
            all.iter().any(|d| d.tag == "circle" && d.has("live")),
            !marked
        );
    }
}

#[test]
fn labels_of_the_trunk_stay_apart() {
    for t in stems() {
        let all = kept(|out| trunk(out, &t, &labels()));
        let found = crowded(&all);
        assert!(found.is_empty(), "{t:?}: {found:?}");
    }
}
