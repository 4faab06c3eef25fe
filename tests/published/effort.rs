//! Minutes: the check values of the model, a simulation by a general-purpose library (rand and rand_distr), and the
//! two anchors in print (a drawknife ring: BIRDLIFESE; street elms: CANNON1982). No published table of minutes by
//! diameter was found, so nothing else can be held against print.

mod visits;

use crate::support::*;
use calc::models::effort::{Effort, StemWork, minutes};
use calc::models::effort_constants::Three;
use calc::terms::quantity::MM_PER_IN;
use rand::SeedableRng;
use rand::rngs::StdRng;
use rand_distr::{Distribution, LogNormal};
use serde_json::{Value, json};

/// Thin, medium and thick bark, millimetres (1/8, 1/2, 1 in).
const THIN: f64 = 3.175;
const MEDIUM: f64 = 12.7;
const THICK: f64 = 25.4;
/// A ring of 6 in.
const SIX: f64 = 152.4;

fn stem(inches: f64, bark_mm: f64) -> StemWork {
    StemWork {
        dbh_mm: inches * MM_PER_IN,
        bark_mm,
        width_mm: SIX,
        live_share: 1.0,
    }
}

/// Minutes without walking and before the factors for a stem that sticks.
fn plain(stems: &[StemWork], slip: f64, fields: Value) -> [f64; 3] {
    let asked = question(&with(
        with(tree("Norway maple", "12"), json!({ "walk": "0" })),
        fields,
    ));
    let constants = &reference().constants.effort;
    let effort = minutes(constants, asked.tree.limbs, &asked.pace, stems, slip).expect("a stem");
    let (likely, high) = (constants.sticking_likely, constants.sticking_high);
    [
        effort.low_min,
        effort.likely_min / (1.0 + likely * slip),
        effort.high_min / (1.0 + high * slip),
    ]
}

/// model.md 8, check values: medium bark, 6-in ring, no walking, no limbs, before the sticking factors.
#[test]
fn the_check_values_of_the_model_are_met_to_about_their_last_digit() {
    for (inches, bark, slip, want) in [
        (3.0, MEDIUM, 1.0, [0.93, 1.65, 2.92]),
        (6.0, MEDIUM, 1.0, [1.49, 2.47, 4.09]),
        (12.0, MEDIUM, 1.0, [2.51, 4.06, 6.59]),
        (24.0, MEDIUM, 1.0, [4.42, 7.21, 11.76]),
        (12.0, THIN, 1.0, [2.19, 3.38, 5.22]),
        (12.0, THICK, 1.0, [3.20, 5.55, 9.63]),
        (12.0, MEDIUM, 0.0, [3.92, 8.83, 19.88]),
    ] {
        let got = plain(&[stem(inches, bark)], slip, json!({}));
        for (got, want) in got.into_iter().zip(want) {
            near_to(
                got,
                want,
                0.006,
                &format!("{inches} in, bark {bark} mm, p {slip}"),
            );
        }
    }
}

/// One draw of each term of T = K [F + C (S + P w/6 + X) B + H L], by the printed constants.
struct Draws {
    rng: StdRng,
    table: Vec<(String, Three)>,
}

impl Draws {
    fn new(seed: u64) -> Self {
        let mut table: Vec<(String, Three)> = Vec::new();
        let rows = rows("content/rules/constants.csv");
        for row in rows.iter().filter(|row| row["name"].ends_with(".low")) {
            let stem = row["name"].trim_end_matches(".low").to_owned();
            let at = |end: &str| {
                let name = format!("{stem}.{end}");
                let row = rows.iter().find(|row| row["name"] == name);
                number(row.unwrap_or_else(|| panic!("no {name}")), "value")
            };
            let three = Three {
                low: at("low"),
                likely: at("likely"),
                high: at("high"),
            };
            table.push((stem, three));
        }
        Self {
            rng: StdRng::seed_from_u64(seed),
            table,
        }
    }

    fn term(&self, name: &str) -> Three {
        let found = self
            .table
            .iter()
            .find(|(known, _)| known == &format!("effort.{name}"));
        found.unwrap_or_else(|| panic!("no {name}")).1
    }

    fn draw(&mut self, three: Three) -> f64 {
        let sigma = (three.high / three.low).ln() / 2.563;
        LogNormal::new(three.likely.ln(), sigma)
            .expect("a spread")
            .sample(&mut self.rng)
    }

    /// Minutes of one tree, every stem with terms of its own, tool and tightness shared.
    fn tree(&mut self, stems: &[StemWork], slip: f64, limby_ft: f64) -> f64 {
        let tools = self.term("delays");
        let tight = self.term("tight");
        let slips = rand::Rng::random_bool(&mut self.rng, slip);
        let b = if slips { 1.0 } else { self.draw(tight) };
        let mut sum = 0.0;
        for work in stems {
            let feet = std::f64::consts::PI * work.dbh_mm / 304.8 * work.live_share;
            let score = self.score(work.bark_mm);
            sum += self.draw(self.term("fixed"));
            sum += b * feet * self.draw(score);
            sum += b * feet * (work.width_mm / 152.4) * self.draw(self.term("peel"));
            sum += b * feet * self.draw(self.term("scrape"));
            if limby_ft > 0.0 {
                sum += limby_ft * self.draw(self.term("limbs"));
            }
        }
        sum * self.draw(tools)
    }

    fn score(&self, bark_mm: f64) -> Three {
        let [thin, medium, thick] =
            ["score_thin", "score_medium", "score_thick"].map(|name| self.term(name));
        let mix = |a: Three, b: Three, t: f64| Three {
            low: a.low + (b.low - a.low) * t,
            likely: a.likely + (b.likely - a.likely) * t,
            high: a.high + (b.high - a.high) * t,
        };
        if bark_mm <= MEDIUM {
            mix(
                thin,
                medium,
                ((bark_mm - THIN) / (MEDIUM - THIN)).clamp(0.0, 1.0),
            )
        } else {
            mix(
                medium,
                thick,
                ((bark_mm - MEDIUM) / (THICK - MEDIUM)).clamp(0.0, 1.0),
            )
        }
    }

    fn quantiles(
        &mut self,
        draws: usize,
        stems: &[StemWork],
        slip: f64,
        limby_ft: f64,
    ) -> [f64; 3] {
        let mut all: Vec<f64> = (0..draws)
            .map(|_| self.tree(stems, slip, limby_ft))
            .collect();
        all.sort_by(f64::total_cmp);
        [0.1, 0.5, 0.9].map(|share| all[(share * draws as f64) as usize])
    }
}

/// Fixed seed, 40,000 draws a case. Likely and high agree within 4 percent. The low end of a log-normal put together
/// by moments lies up to 7 percent under the simulated one (most for thin stems): the range is that much wider.
#[test]
fn a_simulation_of_40_000_draws_agrees_within_4_percent_and_at_the_low_end_within_7() {
    let mut draws = Draws::new(20_270_605);
    let cases: [(&[StemWork], f64, &str, f64); 8] = [
        (&[stem(3.0, MEDIUM)], 1.0, "none", 0.0),
        (&[stem(12.0, MEDIUM)], 1.0, "none", 0.0),
        (&[stem(24.0, THICK)], 1.0, "none", 0.0),
        (&[stem(12.0, THIN)], 0.0, "none", 0.0),
        (&[stem(12.0, MEDIUM)], 0.6, "none", 0.0),
        (&[stem(12.0, MEDIUM)], 0.9, "many", 4.5),
        (
            &[stem(6.0, 9.0), stem(9.0, 18.0), stem(12.0, MEDIUM)],
            0.8,
            "some",
            2.0,
        ),
        (&[stem(8.0, MEDIUM)], 0.3, "none", 0.0),
    ];
    for (stems, slip, limbs, feet) in cases {
        let simulated = draws.quantiles(40_000, stems, slip, feet);
        let ours = plain(stems, slip, json!({ "limbs": limbs }));
        let within = [0.07, 0.04, 0.04];
        for ((ours, simulated), within) in ours.into_iter().zip(simulated).zip(within) {
            let apart = (ours / simulated - 1.0).abs();
            let name = format!("p {slip}, limbs {limbs}, {} stems", stems.len());
            assert!(apart <= within, "{name}: {ours} against {simulated}");
        }
    }
}

/// One stem in ten sticks even when the bark slips (our own assumption). The factors on likely and high come from a
/// simulation; this is another, in which a tenth of the stems of 6, 12 and 24 in has tight bark.
#[test]
fn one_stem_in_ten_that_sticks_makes_the_high_end_more_and_the_likely_hardly() {
    let constants = &reference().constants.effort;
    assert_eq!(
        (constants.sticking_likely, constants.sticking_high),
        (0.04, 0.17)
    );
    let mut draws = Draws::new(1_979);
    for inches in [6.0, 12.0, 24.0] {
        let work = [stem(inches, MEDIUM)];
        let all = draws.quantiles(40_000, &work, 1.0, 0.0);
        let some = draws.quantiles(40_000, &work, 0.9, 0.0);
        near_to(some[1] / all[1], 1.04, 0.02, "likely");
        near_to(some[2] / all[2], 1.17, 0.05, "high");
    }
    let asked = question(&with(tree("Norway maple", "12"), json!({ "walk": "0" })));
    let at = |slip: f64| {
        minutes(
            constants,
            asked.tree.limbs,
            &asked.pace,
            &[stem(12.0, MEDIUM)],
            slip,
        )
        .expect("a stem")
    };
    near_to(
        at(1.0).likely_min / 4.06,
        1.04,
        0.002,
        "likely where all slips",
    );
    near_to(at(1.0).high_min / 6.59, 1.17, 0.002, "high where all slips");
    near_to(
        at(0.0).likely_min / 8.83,
        1.0,
        0.002,
        "no factor where nothing slips",
    );
}

/// BIRDLIFESE: "a minute or so" (read as 1 to 2) for a stem of 20 to 25 cm by sharp drawknife in spring: the ring only,
/// no walking. Ours, for the ring without the fixed part and without tools and rest, lies about there.
#[test]
fn scoring_and_peeling_a_20_to_25_cm_stem_takes_a_minute_or_two() {
    let asked = question(&tree("silver birch", "9"));
    for cm in [20.0, 22.5, 25.0] {
        let mut work = stem(1.0, MEDIUM);
        work.dbh_mm = cm * 10.0;
        let effort = minutes(
            &reference().constants.effort,
            asked.tree.limbs,
            &asked.pace,
            &[work],
            1.0,
        )
        .expect("a stem");
        let ring = effort.tasks.score + effort.tasks.peel;
        assert!((1.0..=2.0).contains(&ring), "{cm} cm: {ring} min");
    }
}

/// CANNON1982, Table 1: 217 USD for 69 trees at 51 USD a crew-hour is 3.7 crew-minutes a tree. The street elms of the
/// same programme averaged 22 in (BARGER1977). The crew is not told: ours fits one of 2 or 3.
#[test]
fn street_elms_of_22_in_take_a_crew_of_2_or_3_about_3_7_minutes() {
    let crew_minutes = 217.0 / 51.0 / 69.0 * 60.0;
    near_to(crew_minutes, 3.7, 0.05, "as derived in effort.csv");
    let bark_mm = 0.031 * 22.0 * MM_PER_IN;
    // The width of their rings is not told: 6 in, or our better width of half the trunk.
    for width_mm in [SIX, 11.0 * MM_PER_IN] {
        let work = StemWork {
            width_mm,
            ..stem(22.0, bark_mm)
        };
        let [low, likely, high] = plain(&[work], 1.0, json!({}));
        let crew = 2.0 * crew_minutes..=3.0 * crew_minutes;
        assert!(crew.contains(&likely), "{likely} person-minutes");
        assert!(low <= *crew.end() && high >= *crew.start());
    }
    // 3.14 of 258 USD: girdling is about 1.2 percent of removing the same tree.
    near_to(217.0 / 69.0 / 258.0, 0.012, 0.0005, "share of removal");
}

/// HENDEE and MINTO1908: above 6 in girdling wins over felling. CAMPU2017: 26 to 28 person-minutes to fell a large
/// conifer, with cutting only 18 to 20 percent of it.
#[test]
fn ringing_the_thickest_conifer_of_the_checks_takes_less_than_felling_a_large_one() {
    let [_, likely, high] = plain(&[stem(24.0, THICK)], 1.0, json!({}));
    assert!(likely < 26.0 && high < 28.0, "{likely} to {high}");
}

/// JEPSON1907B: men worked 0.75 of their minutes when practised.
#[test]
fn a_practised_crew_takes_three_quarters_of_the_minutes() {
    let crew = plain(&[stem(12.0, MEDIUM)], 0.8, json!({ "practised": true }));
    let anyone = plain(&[stem(12.0, MEDIUM)], 0.8, json!({}));
    for (crew, anyone) in crew.into_iter().zip(anyone) {
        near_to(crew, anyone * 0.75, 1e-6, "minutes");
    }
}

/// AUSDEA1915: a pass to take sprouts off costs 0.27 to 0.50 of the first work.
#[test]
fn a_sprout_visit_takes_27_to_50_percent_of_the_first_work_and_the_walk() {
    let effort = ask(&tree("Norway maple", "12")).effort.expect("minutes");
    let work = effort.likely_min - effort.walk_min;
    let (low, likely, high) = effort.visit_min;
    near_to((low - effort.walk_min) / work, 0.27, 1e-9, "low");
    near_to((likely - effort.walk_min) / work, 0.37, 1e-9, "likely");
    near_to((high - effort.walk_min) / work, 0.50, 1e-9, "high");
}

#[test]
fn walking_counts_once_and_without_spread_however_many_stems_there_are() {
    let several = json!([{ "diameter": "8" }, { "diameter": "9" }, { "diameter": "10" }]);
    let with_walk = |walk: &str| {
        let asked = with(
            tree("Norway maple", "1"),
            json!({ "stems": several, "walk": walk }),
        );
        ask(&asked).effort.expect("minutes")
    };
    let (none, ten) = (with_walk("0 min"), with_walk("10 min"));
    near_to(ten.low_min - none.low_min, 10.0, 1e-9, "low");
    near_to(ten.likely_min - none.likely_min, 10.0, 1e-9, "likely");
    near_to(ten.high_min - none.high_min, 10.0, 1e-9, "high");
    // 100 ft a minute is the likely pace: 500 ft are 5 minutes.
    near_to(with_walk("500 ft").walk_min, 5.0, 1e-9, "a distance");
    let unsaid = ask(&tree("Norway maple", "12")).effort.expect("minutes");
    near_to(
        unsaid.walk_min,
        2.0,
        1e-9,
        "two minutes when nothing is said (our own assumption)",
    );
}

#[test]
fn minutes_rise_with_size_bark_width_limbs_and_tightness_and_low_likely_high_stand_in_order() {
    let order = |[low, likely, high]: [f64; 3]| assert!(0.0 < low && low < likely && likely < high);
    let base = plain(&[stem(12.0, MEDIUM)], 0.8, json!({}));
    order(base);
    let wider = StemWork {
        width_mm: 2.0 * SIX,
        ..stem(12.0, MEDIUM)
    };
    for more in [
        plain(&[stem(13.0, MEDIUM)], 0.8, json!({})),
        plain(&[stem(12.0, THICK)], 0.8, json!({})),
        plain(&[wider], 0.8, json!({})),
        plain(&[stem(12.0, MEDIUM)], 0.8, json!({ "limbs": "some" })),
        plain(&[stem(12.0, MEDIUM)], 0.5, json!({})),
        plain(&[stem(12.0, MEDIUM), stem(3.0, THIN)], 0.8, json!({})),
    ] {
        order(more);
        for (more, base) in more.into_iter().zip(base) {
            assert!(more > base);
        }
    }
    let half = StemWork {
        live_share: 0.5,
        ..stem(12.0, MEDIUM)
    };
    assert!(
        plain(&[half], 0.8, json!({}))[1] < base[1],
        "only the live part is taken"
    );
}

/// The answer's minutes are those of the better width, on the live share, of the advised day.
#[test]
fn the_minutes_of_an_answer_are_those_of_its_better_width_and_its_probability() {
    let asked = with(tree("Norway maple", "14 1/2"), json!({ "walk": "0" }));
    let answer = ask(&asked);
    let stem = &answer.stems[0];
    let work = StemWork {
        dbh_mm: stem.dbh_mm,
        bark_mm: stem.bark.as_ref().expect("bark").mm,
        width_mm: stem.ring.as_ref().expect("a ring").better_mm,
        live_share: 1.0,
    };
    let effort = answer.effort.expect("minutes");
    let asked = question(&asked);
    let again: Effort = minutes(
        &reference().constants.effort,
        asked.tree.limbs,
        &asked.pace,
        &[work],
        effort.slip,
    )
    .expect("a stem");
    assert_eq!(
        [effort.low_min, effort.likely_min, effort.high_min],
        [again.low_min, again.likely_min, again.high_min]
    );
    // Without a place the rules and minutes use 0.6 inside the months (our own assumption).
    assert_eq!(effort.slip, 0.6);
    assert_eq!(answer.timing.probability, None, "and no number is shown");
}
