//! The sample property, "Hollow Brook": 300 trees, all of them invented. The list in `content/sample` is what is made
//! here from a seed, to the byte, so that nobody edits it by hand.

use crate::show::{Told, folder, read};
use calc_list::{Is, write};

const SEED: u64 = 20_270_612;

/// SplitMix64 (Steele, Lea and Flood 2014), constants from memory: small, and the same everywhere.
struct Random(u64);

impl Random {
    fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    /// From 0 to 1.
    fn share(&mut self) -> f64 {
        (self.bits() >> 11) as f64 / (1_u64 << 53) as f64
    }

    fn between(&mut self, low: f64, high: f64) -> f64 {
        low + self.share() * (high - low)
    }

    /// About normal: twelve shares, their mean taken off. Sums are the same on every machine.
    fn normal(&mut self) -> f64 {
        (0..12).map(|_| self.share()).sum::<f64>() - 6.0
    }

    /// The place of one of some weights.
    fn pick(&mut self, weights: impl Iterator<Item = f64> + Clone) -> usize {
        let mut left = self.share() * weights.clone().sum::<f64>();
        for (at, weight) in weights.enumerate() {
            left -= weight;
            if left < 0.0 {
                return at;
            }
        }
        0
    }
}

/// Unit, trees, position, metres north and east of the middle, metres above the sea.
const UNITS: [(&str, usize, &str, f64, f64, f64); 4] = [
    ("North hedge", 60, "outlying", 260.0, 0.0, 137.0),
    ("Old field", 70, "outlying", 60.0, -240.0, 128.0),
    ("Creek edge", 80, "edge", -120.0, 40.0, 112.0),
    ("Oak wood", 90, "inside", -40.0, 300.0, 121.0),
];

const SPECIES: [(&str, f64); 11] = [
    ("Norway maple", 30.0),
    ("Tree-of-heaven", 10.0),
    ("Black locust", 10.0),
    ("Callery pear", 9.0),
    ("Siberian elm", 8.0),
    ("Boxelder", 8.0),
    ("Common buckthorn", 8.0),
    ("White mulberry", 5.0),
    ("Scots pine", 6.0),
    ("European larch", 4.0),
    ("Sweet cherry", 2.0),
];

/// What stands near, how often of a hundred, from and to how many feet.
const TARGETS: [(&str, f64, f64, f64); 6] = [
    ("none", 55.0, 0.0, 0.0),
    ("path", 20.0, 15.0, 200.0),
    ("property_line", 8.0, 5.0, 120.0),
    ("building", 5.0, 20.0, 150.0),
    ("line", 4.0, 10.0, 150.0),
    ("", 8.0, 0.0, 0.0),
];

const HEADER: [&str; 20] = [
    "tree_id",
    "species",
    "dbh_in",
    "girth_in",
    "bark_mm",
    "unit",
    "position",
    "lat",
    "lon",
    "elevation_m",
    "target",
    "target_ft",
    "line_within_reach",
    "condition",
    "status",
    "done_date",
    "date",
    "Photo",
    "Surveyed by",
    "Old tag",
];

const METRES_A_DEGREE: f64 = 111_320.0;
const MIDDLE: [f64; 2] = [42.36, -71.5];

/// Inches to a half, as people write them.
fn inches(value: f64) -> String {
    let halves = (value * 2.0).round() as u32;
    match (halves / 2, halves % 2) {
        (whole, 0) => whole.to_string(),
        (0, _) => "1/2".to_owned(),
        (whole, _) => format!("{whole} 1/2"),
    }
}

fn size(random: &mut Random, species: &str) -> (String, f64) {
    if species == "Common buckthorn" {
        let stems = 3 + (random.share() * 4.0) as usize;
        let sizes: Vec<f64> = (0..stems).map(|_| random.between(1.0, 4.0)).collect();
        let written: Vec<String> = sizes.iter().map(|size| inches(*size)).collect();
        return (written.join("; "), sizes[0]);
    }
    // A size of 8.5 in, times or through e to 0.45 at one standard deviation; e^x as its series, the same everywhere.
    let power = 0.45 * random.normal();
    let grown = (1..20).fold((1.0, 1.0), |(sum, term), at| {
        let term = term * power / f64::from(at);
        (sum + term, term)
    });
    let inch = (8.5 * grown.0).clamp(1.5, 32.0);
    (inches(inch), inch)
}

fn made() -> String {
    let mut random = Random(SEED);
    let mut rows: Vec<Vec<String>> = Vec::new();
    for (unit, trees, position, north, east, height) in UNITS {
        for _ in 0..trees {
            let number = rows.len() + 1;
            let species = SPECIES[random.pick(SPECIES.iter().map(|it| it.1))].0;
            let (dbh, inch) = size(&mut random, species);
            let bark = if random.share() < 1.0 / 6.0 {
                format!("{:.0}", (inch * 25.4 * random.between(0.02, 0.05)).max(1.0))
            } else {
                String::new()
            };
            let (north, east) = (
                north + 40.0 * random.normal(),
                east + 40.0 * random.normal(),
            );
            let lat = MIDDLE[0] + north / METRES_A_DEGREE;
            // The cosine of 42.36 degrees.
            let lon = MIDDLE[1] + east / (METRES_A_DEGREE * 0.738_96);
            let elevation = height + random.between(-2.0, 2.0);
            let (target, _, low, high) = TARGETS[random.pick(TARGETS.iter().map(|it| it.1))];
            let feet = random.between(low, high);
            let near = if high > 0.0 {
                format!("{feet:.0}")
            } else {
                String::new()
            };
            let line = match target {
                "" => "",
                "line" => "yes",
                _ => "no",
            };
            rows.push(
                [
                    format!("HB-{number:03}"),
                    species.to_owned(),
                    dbh,
                    String::new(),
                    bark,
                    unit.to_owned(),
                    position.to_owned(),
                    format!("{lat:.5}"),
                    format!("{lon:.5}"),
                    format!("{elevation:.0}"),
                    target.to_owned(),
                    near,
                    line.to_owned(),
                    "alive".to_owned(),
                    String::new(),
                    String::new(),
                    String::new(),
                    format!("img_{:04}.jpg", 1000 + number * 3),
                    ["A. Sample", "B. Sample", "C. Sample"][number % 3].to_owned(),
                    format!("{}", 40 + number * 2),
                ]
                .to_vec(),
            );
        }
    }
    let at = |name: &str| HEADER.iter().position(|it| *it == name).expect(name);
    // Twelve dead ones, six that were rung last year, four that have their day.
    for nth in 0..12 {
        rows[7 + nth * 23][at("condition")] = "dead".into();
    }
    for nth in 0..6 {
        let row = &mut rows[16 + nth * 41];
        row[at("status")] = "treated".into();
        row[at("done_date")] = format!("2026-06-{:02}", 6 + nth * 3);
    }
    for (nth, day) in ["2027-05-22", "2027-06-05", "2027-06-12", "2027-06-19"]
        .iter()
        .enumerate()
    {
        rows[34 + nth * 61][at("date")] = (*day).into();
    }
    // Nine faults, one a row.
    rows[20][at("dbh_in")] = "fourteen".into();
    rows[52][at("dbh_in")] = String::new();
    rows[81][at("species")] = "Zelkova".into();
    rows[110][at("species")] = "maple".into();
    rows[141][at("tree_id")] = rows[140][at("tree_id")].clone();
    rows[170][at("tree_id")] = "3-Dec".into();
    rows[201][at("dbh_in")] = "1,234".into();
    rows[230][at("dbh_in")] = "9".into();
    rows[230][at("girth_in")] = "40".into();
    rows[262][at("target")] = "path".into();
    rows[262][at("target_ft")] = "near".into();
    rows[262][at("line_within_reach")] = "no".into();
    let mut text = String::new();
    write::row(HEADER, &mut text);
    for row in &rows {
        write::row(row.iter().map(String::as_str), &mut text);
    }
    text.replace("\r\n", "\n")
}

#[test]
fn the_sample_is_what_is_made_from_its_seed() {
    let path = folder().join("../../content/sample/trees.csv");
    let made = made();
    let kept = std::fs::read_to_string(&path).unwrap_or_default();
    assert!(
        made == kept,
        "{} is not what is made here; it should be:\n{made}",
        path.display()
    );
}

#[test]
fn the_sample_has_nine_faults_and_every_row_is_counted() {
    let list = read(made().as_bytes(), &Told::default()).expect("a list");
    assert!(list.opened.asks.is_empty(), "{:?}", list.opened.asks);
    assert_eq!((list.counts.rows, list.counts.trees()), (300, 300));
    let codes: Vec<(u64, &str)> = list
        .rows
        .iter()
        .flat_map(|row| &row.problems)
        .map(|problem| (problem.row, problem.code.name()))
        .collect();
    assert_eq!(
        codes,
        [
            (22, "not_a_number"),
            (54, "size_missing"),
            (83, "genus_only"),
            (112, "genus_only"),
            (143, "tag_twice"),
            (172, "tag_mangled"),
            (203, "ambiguous"),
            (232, "sizes_disagree"),
            (264, "not_a_number"),
        ]
    );
    assert_eq!(list.counts.to_fix, 8);
    let of = |is: fn(&calc_list::Row) -> bool| list.rows.iter().filter(|row| is(row)).count();
    assert_eq!(of(|row| row.tag.status == "treated"), 6);
    assert_eq!(of(|row| !row.tag.pin.is_empty()), 4);
    let dead = |row: &calc_list::Row| matches!(&row.is, Is::Tree(typed, _) if typed.condition == Some("dead".into()));
    assert_eq!(of(dead), 12);
}
