//! Writes answers to a dozen invented questions as one page, to be looked at, or as text.
//! `cargo run -p calc-view --example answers -- dark > page.html` (light, dark, sun, or text; then a name).

use calc::model::season::Local;
use calc::question::{StemTyped, TargetTyped, Text, Typed, read};
use calc_view::answer::{self, Options};
use calc_view::draw::mark::defs;
use calc_view::out::Html;

const SHEETS: [&str; 3] = [
    include_str!("../../../www/style/tokens.css"),
    include_str!("../../../www/style/calc.css"),
    include_str!("../../../www/style/page.css"),
];

fn text(value: &str) -> Option<Text> {
    Some(Text::from(value))
}

fn ask(species: &str, diameter: &str, date: &str) -> Typed {
    Typed {
        version: 1,
        species: text(species),
        stems: vec![stem(diameter)],
        date: text(date),
        today: text("2027-03-02"),
        line_within_reach: text("no"),
        none_in_reach: true,
        region: text("US-MA"),
        ..Typed::default()
    }
}

fn stem(diameter: &str) -> StemTyped {
    StemTyped {
        diameter: text(diameter),
        ..StemTyped::default()
    }
}

fn near(kind: &str, distance: &str) -> Vec<TargetTyped> {
    vec![TargetTyped {
        kind: text(kind),
        distance: text(distance),
        ..TargetTyped::default()
    }]
}

fn questions() -> Vec<(&'static str, Typed)> {
    let seen = || calc::question::LeafOutTyped {
        stage: text("buds_open"),
        date: text("2027-04-30"),
        ..Default::default()
    };
    let maple = || ask("Norway maple", "14 1/2 in", "2027-06-12");
    vec![
        (
            "do",
            Typed {
                leafed_out: Some(seen()),
                none_in_reach: false,
                targets: near("path", "180 ft"),
                ..maple()
            },
        ),
        ("envelope", ask("Scots pine", "16 in", "2027-06-12")),
        (
            "wait",
            Typed {
                leafed_out: Some(seen()),
                ..ask("Norway maple", "12 in", "2027-11-12")
            },
        ),
        ("other", ask("common buckthorn", "3/4 in", "2027-06-12")),
        ("herbicide", ask("tree-of-heaven", "7 in", "2027-08-12")),
        (
            "professional",
            Typed {
                none_in_reach: false,
                targets: near("path", "40 ft"),
                ..ask("Norway maple", "22 in", "2027-06-12")
            },
        ),
        (
            "line",
            Typed {
                none_in_reach: false,
                line_within_reach: None,
                targets: near("line", "30 ft"),
                ..maple()
            },
        ),
        (
            "weak",
            Typed {
                none_in_reach: false,
                signs: vec!["cavity".into(), "lean_toward".into()],
                targets: near("building", "100 ft"),
                ..maple()
            },
        ),
        (
            "open",
            Typed {
                none_in_reach: false,
                line_within_reach: None,
                leafed_out: Some(seen()),
                ..maple()
            },
        ),
        (
            "oak",
            Typed {
                region: None,
                ..ask("northern red oak", "11 in", "2027-06-02")
            },
        ),
        (
            "oak-wi",
            Typed {
                region: text("US-WI"),
                ..ask("northern red oak", "11 in", "2027-06-02")
            },
        ),
        (
            "stems",
            Typed {
                stems: vec![
                    stem("9 in"),
                    StemTyped {
                        live_share: text("70 %"),
                        bark: text("0.5 in"),
                        ..stem("12 in")
                    },
                    stem("4 in"),
                ],
                goal: text("spare_one"),
                spare: Some(0),
                leafed_out: Some(seen()),
                ..maple()
            },
        ),
        ("clone", ask("black locust", "8 in", "2027-06-12")),
        ("aspen", ask("quaking aspen", "8 in", "2027-06-12")),
        ("unknown", ask("unknown broadleaf", "8 in", "2027-06-12")),
        (
            "dead",
            Typed {
                condition: text("dead"),
                ..maple()
            },
        ),
        (
            "native",
            Typed {
                region: text("US-WI"),
                ..ask("boxelder", "9 in", "2027-06-12")
            },
        ),
        (
            "metric",
            Typed {
                units: text("metric"),
                region: text("GB"),
                ..ask("sycamore", "36,8", "2027-06-12")
            },
        ),
        (
            "year",
            Typed {
                date: text("year"),
                leafed_out: Some(seen()),
                ..maple()
            },
        ),
        ("palm", ask("palm", "12 in", "2027-06-12")),
        (
            "girth",
            Typed {
                stems: vec![StemTyped {
                    girth: text("44 in"),
                    ..StemTyped::default()
                }],
                height: text("52 ft"),
                none_in_reach: false,
                targets: near("road", "85 ft"),
                ..maple()
            },
        ),
        (
            "hollow",
            Typed {
                signs: vec!["cavity".into()],
                ..maple()
            },
        ),
    ]
}

fn main() {
    let mut args = std::env::args().skip(1);
    let theme = args.next().unwrap_or_else(|| "light".into());
    let only = args.next();
    let reference = calc_data::reference();
    let mut body = String::new();
    for (name, typed) in questions() {
        if only.as_deref().is_some_and(|only| only != name) {
            continue;
        }
        let question = match read(reference, &typed) {
            Ok(question) => question,
            Err(problems) => {
                let mut out = Html::default();
                answer::problems(&mut out, &problems, &Options::default());
                body.push_str(&out.into_string());
                continue;
            }
        };
        let answer = calc::answer::answer(reference, &question, &Local::default());
        if theme == "text" {
            println!("== {name} ==");
            println!(
                "{}",
                calc_view::status(
                    calc_view::kind::Kind::TreePlan,
                    reference,
                    &question,
                    &answer
                )
            );
            println!("{}", calc_view::text::answer(reference, &question, &answer));
            continue;
        }
        let prefix = format!("{name}-");
        let mut out = Html::default();
        answer::answer(
            &mut out,
            reference,
            &question,
            &answer,
            &Options {
                id_prefix: &prefix,
                sources_base: "sources/",
                with_form: true,
                with_buttons: true,
                ..Options::default()
            },
        );
        let html = out.into_string();
        eprintln!("{name}: {} bytes", html.len());
        body.push_str(&format!("<h1>{name}</h1>{html}"));
    }
    if theme == "text" {
        return;
    }
    let mut head = Html::default();
    defs(&mut head);
    println!(
        "<!doctype html><html lang=en data-theme={theme}><meta charset=utf-8><meta name=viewport content=\"width=device-width\"><title>Answers</title><style>{}</style><body>{}<main class=\"wrap answer\">{body}</main></body></html>",
        SHEETS.concat(),
        head.into_string()
    );
}
