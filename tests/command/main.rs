//! The command line as people and scripts meet it: output, messages, exit codes.

mod alone;
mod dangers;
mod list;
mod plan;
mod plan_files;
mod plan_found;
mod plan_land;
mod plan_of_sample;
mod plan_said;
mod plan_walk;
mod settings;

use serde_json::Value;
use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};
use std::sync::OnceLock;

/// The question of the project's interface description, every name in it used once.
const WHOLE: &str = r#"{"version":1,"units":"us","species":"Norway maple","stems":[{"diameter":"14 1/2 in","live_share":"100 %","bark":"0.4 in"}],
"setting":"open","date":"2027-06-12","place":{"latitude":"42.36","longitude":"-71.06","elevation":"15 m"},"region":"US-MA",
"leafed_out":{"stage":"buds_open","date":"2027-04-30"},"height":"52 ft",
"targets":[{"kind":"path","distance":"200 ft","slope":"10 %","downhill":false}],"line_within_reach":"no","none_in_reach":false,
"condition":"alive","signs":["cavity"],"herbicide":"not_said","goal":"wildlife","whole_clone":"yes","same_genus_near":"no",
"vigour":"ordinary","dry_spell":"none","limbs":"none","cannot_wait":false}"#;

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .parent()
        .expect("the tests lie in the project")
}

fn program() -> &'static Path {
    static PROGRAM: OnceLock<PathBuf> = OnceLock::new();
    PROGRAM.get_or_init(|| {
        let status = Command::new(env!("CARGO"))
            .current_dir(root())
            .args(["build", "--quiet", "--package", "slipbark"])
            .status()
            .expect("cargo can be started");
        assert!(status.success(), "the program did not build");
        let target = std::env::var_os("CARGO_TARGET_DIR")
            .map_or_else(|| root().join("target"), |folder| root().join(folder));
        target
            .join("debug")
            .join(format!("slipbark{}", std::env::consts::EXE_SUFFIX))
    })
}

fn run(arguments: &[&str], input: &str) -> (i32, String, String) {
    let mut process = Command::new(program())
        .current_dir(root())
        .args(arguments)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the program can be started");
    // A program that refuses its arguments ends before it reads.
    let mut pipe = process.stdin.take().expect("a pipe");
    if let Err(error) = pipe.write_all(input.as_bytes()) {
        assert_eq!(error.kind(), std::io::ErrorKind::BrokenPipe, "{error}");
    }
    drop(pipe);
    let Output {
        status,
        stdout,
        stderr,
    } = process.wait_with_output().expect("the program ends");
    let text = |bytes| String::from_utf8(bytes).expect("it prints UTF-8");
    (
        status.code().expect("it ends by itself"),
        text(stdout),
        text(stderr),
    )
}

fn problems(input: &str) -> Vec<(String, String, String)> {
    let (code, out, _) = run(&["answer", "-"], input);
    assert_eq!(code, 2, "{out}");
    let whole: Value = serde_json::from_str(&out).expect("it prints JSON");
    let text = |problem: &Value, key: &str| {
        problem[key]
            .as_str()
            .expect("a problem has field, code and message")
            .to_owned()
    };
    let list = whole["problems"].as_array().expect("it has a list");
    list.iter()
        .map(|problem| {
            (
                text(problem, "field"),
                text(problem, "code"),
                text(problem, "message"),
            )
        })
        .collect()
}

#[test]
fn a_whole_question_is_answered_with_the_names_of_the_interface() {
    let (code, out, error) = run(&["answer", "-"], WHOLE);
    assert_eq!((code, error.as_str()), (0, ""), "{out}");
    let answer: Value = serde_json::from_str(&out).expect("it prints JSON");
    for name in [
        "version",
        "outcome",
        "headline_method",
        "methods",
        "stems",
        "height",
        "reach",
        "timing",
        "advised_day",
        "asked_verdict",
        "effort",
        "visits",
        "cautions",
        "if",
        "next_line",
        "changes",
        "assumed",
        "sources",
    ] {
        assert!(answer.get(name).is_some(), "there is no `{name}`");
    }
    assert_eq!(answer["version"], 1);
    assert_eq!(answer["methods"].as_array().map(Vec::len), Some(9));
    // 14.5 in × 25.4 mm/in (exact by definition of the inch).
    let dbh = answer["stems"][0]["dbh_mm"].as_f64().expect("a number");
    assert!((dbh - 368.3).abs() < 1e-9, "{dbh}");
    // 52 ft × 0.3048 m/ft (exact).
    let height = answer["height"]["shown_m"].as_f64().expect("a number");
    assert!((height - 15.8496).abs() < 1e-9, "{height}");
}

#[test]
fn the_same_question_from_a_file_gives_the_same_answer() {
    let file = std::env::temp_dir().join(format!("slipbark-question-{}.json", std::process::id()));
    std::fs::write(&file, WHOLE).expect("the file can be written");
    let from_file = run(&["answer", file.to_str().expect("a plain name")], "");
    let _ = std::fs::remove_file(&file);
    assert_eq!(from_file, run(&["answer", "-"], WHOLE));
}

#[test]
fn words_for_people_are_short_and_all_of_them_come_when_asked_for() {
    let (code, short, _) = run(&["answer", "--text", "-"], WHOLE);
    assert_eq!(code, 0);
    assert!(
        short.lines().count() > 10 && !short.contains('{'),
        "{short}"
    );
    let (code, full, _) = run(&["answer", "--text", "--full", "-"], WHOLE);
    assert_eq!(code, 0);
    assert!(!full.contains('{'), "{full}");
    let words = |text: &str| text.split_whitespace().count();
    assert!(words(&short) <= 700, "{} words: {short}", words(&short));
    assert!(words(&full) > 2 * words(&short), "{full}");
    assert_eq!(short.lines().next(), full.lines().next());
    let (code, _, error) = run(&["answer", "--full", "-"], WHOLE);
    assert_eq!(code, 2);
    assert!(error.contains("--text"), "{error}");
}

#[test]
fn all_problems_of_the_values_come_at_once() {
    let found = problems(
        r#"{"version":1,"species":"nrway maple","stems":[{"diameter":"x"},{"diameter":"9 in","girth":"30 in"}],"date":"2027-02-30","region":"MA"}"#,
    );
    let fields: Vec<_> = found
        .iter()
        .map(|(field, code, _)| (field.as_str(), code.as_str()))
        .collect();
    for expected in [
        ("species", "unknown_species"),
        ("stems[0].diameter", "not_a_number"),
        ("date", "no_such_day"),
    ] {
        assert!(
            fields.contains(&expected),
            "{expected:?} is not in {fields:?}"
        );
    }
    assert!(
        fields
            .iter()
            .any(|(field, _)| field.starts_with("stems[1]")),
        "{fields:?}"
    );
    let (_, _, message) = found
        .iter()
        .find(|(field, ..)| field == "species")
        .expect("found above");
    assert!(
        message.contains("Norway maple"),
        "a misspelling gets suggestions: {message}"
    );
}

#[test]
fn what_is_no_question_says_where_it_is_wrong() {
    for (input, field, code, part) in [
        (
            "{\"version\":1,\n\"spcies\":\"x\"}",
            "spcies",
            "unknown_key",
            "Line 2",
        ),
        (
            r#"{"stems":[{"diameter":true}]}"#,
            "stems[0].diameter",
            "wrong_type",
            "Line 1",
        ),
        ("{", "", "not_json", "Line 1"),
        ("", "", "not_json", "JSON object"),
        ("[]", "", "not_json", "JSON object"),
    ] {
        let found = problems(input);
        assert_eq!(found.len(), 1, "{input}");
        assert_eq!(
            (found[0].0.as_str(), found[0].1.as_str()),
            (field, code),
            "{input}"
        );
        assert!(found[0].2.contains(part), "{input}: {}", found[0].2);
    }
}

#[test]
fn a_command_line_that_is_not_understood_ends_with_2_and_a_missing_file_with_1() {
    let (code, out, error) = run(&["anwser"], "");
    assert_eq!((code, out.as_str()), (2, ""));
    assert!(error.contains("answer"), "{error}");
    let (code, _, error) = run(&["answer", "no-such-file.json"], "");
    assert_eq!(code, 1);
    assert!(error.contains("no-such-file.json"), "{error}");
    let (code, out, _) = run(&["help"], "");
    assert_eq!(code, 0);
    assert!(out.contains("Answer the question in FILE"), "{out}");
}

/// The question at another place, with no leaf-out seen and no signs.
fn placed(latitude: &str, longitude: &str, elevation: &str) -> String {
    WHOLE
        .replace(
            r#""latitude":"42.36","longitude":"-71.06","elevation":"15 m""#,
            &format!(
                r#""latitude":"{latitude}","longitude":"{longitude}","elevation":"{elevation}""#
            ),
        )
        .replace(
            r#""leafed_out":{"stage":"buds_open","date":"2027-04-30"},"#,
            "",
        )
        .replace(r#""signs":["cavity"],"#, "")
}

#[test]
fn a_place_that_may_be_meant_otherwise_is_said_in_words_and_in_the_answer() {
    for (latitude, longitude, elevation, part) in [
        (
            "42.36",
            "71.06",
            "15 m",
            "Did you mean 42.36, −71.06? West and south are minus.",
        ),
        ("-71.06", "42.36", "15 m", "Did you mean 42.36, −71.06?"),
        ("5", "-25", "15 m", "over 300 km (190 miles) off"),
        ("42.36", "-71.06", "500 m", "feet or metres?"),
    ] {
        let asked = placed(latitude, longitude, elevation);
        let (code, out, _) = run(&["answer", "--text", "--full", "-"], &asked);
        assert_eq!(code, 0, "{out}");
        assert!(
            out.contains(part),
            "{latitude}, {longitude}: {part} is not in {out}"
        );
        // The short words leave the season out; it is told beside them.
        let (_, _, error) = run(&["answer", "--text", "-"], &asked);
        assert!(error.contains(part), "{part} is not in {error}");
    }
    let (_, out, _) = run(&["answer", "-"], &placed("42.36", "71.06", "15 m"));
    let answer: Value = serde_json::from_str(&out).expect("it prints JSON");
    assert_eq!(answer["timing"]["meant"]["lat"], 42.36);
    assert_eq!(answer["timing"]["meant"]["lon"], -71.06);
    assert_eq!(answer["timing"]["opens"], Value::Null);
}

#[test]
fn the_year_of_a_place_is_text_or_a_table_for_one_species_or_all() {
    let (code, all, error) = run(&["year", "--place", "Madison, WI", "--year", "2027"], "");
    assert_eq!((code, error.as_str()), (0, ""), "{all}");
    assert!(all.starts_with("When bark slips, 2027"), "{all}");
    assert!(
        all.contains("Norway maple") && all.contains("Give or take"),
        "{all}"
    );
    assert!(all.contains("The elevation was not given"), "{all}");
    let (_, one, _) = run(
        &[
            "year",
            "--place",
            "43.07,-89.4,270 m",
            "--species",
            "norway maple",
            "--year",
            "2028",
        ],
        "",
    );
    assert!(
        one.contains(" best\n") && one.contains("give or take"),
        "{one}"
    );
    let (_, table, error) = run(
        &[
            "year",
            "--place",
            "43.07,-89.4,270 m",
            "--species",
            "norway maple",
            "--year",
            "2028",
            "--csv",
        ],
        "",
    );
    // A leap year has its 366 days, and a head.
    assert_eq!(table.lines().count(), 367, "{table}");
    assert!(
        table.contains(",2028-02-29,") && !error.contains(','),
        "{error}"
    );
    let (_, table, _) = run(&["year", "--place", "43.07,-89.4,270 m", "--csv"], "");
    assert!(
        table.starts_with("scientific_name,common_name,opens,"),
        "{table}"
    );
    assert!(table.lines().count() > 70, "{table}");
}

#[test]
fn a_year_says_what_is_odd_about_its_place() {
    for (place, part) in [
        ("42.36,71.06", "Did you mean 42.36, −71.06?"),
        ("5,-25", "over 300 km (190 miles) off"),
        ("42.36,-71.06,500 m", "feet or metres?"),
        ("24.56,-81.78,2 m", "So near the equator"),
    ] {
        let (code, out, _) = run(&["year", "--place", place], "");
        assert_eq!(code, 0, "{out}");
        assert!(out.contains(part), "{place}: {part} is not in {out}");
        // A table keeps to its columns; the words go beside it.
        let (_, table, error) = run(&["year", "--place", place, "--csv"], "");
        assert!(
            !table.contains(part) && error.contains(part),
            "{place}: {error}"
        );
    }
    for (place, part) in [
        ("151.2,-33.9", "latitude lies between -90 and 90"),
        ("42.36", "Type latitude, longitude"),
        ("Springfield", "is not one town"),
    ] {
        let (code, _, error) = run(&["year", "--place", place], "");
        assert_eq!(code, 1, "{place}");
        assert!(error.contains(part), "{place}: {error}");
    }
}

/// Words that only English has, in what a command says in Spanish.
fn speaks_spanish(said: &str) {
    let english = ["the", "is", "and", "not", "of", "to", "be", "with"];
    let mut words = said.split(|c: char| !c.is_alphanumeric());
    let found = words.find(|word| english.contains(word));
    assert!(found.is_none(), "{found:?}: {said}");
}

#[test]
fn every_command_speaks_spanish_and_knows_the_trees_by_their_spanish_names() {
    let asked = r#"{"version":1,"species":"Arce Noruego","stems":[{"diameter":"14,5"}],"date":"2027-junio-12","none_in_reach":true,"line_within_reach":"no"}"#;
    let (code, said, error) = run(&["answer", "-", "--text", "--lang", "es"], asked);
    assert_eq!((code, error.as_str()), (0, ""), "{said}");
    assert!(said.starts_with("Hágalo 12 jun 2027"), "{said}");
    speaks_spanish(&said);
    let (_, calendar, _) = run(&["answer", "-", "--ics", "--lang", "es"], asked);
    assert!(
        calendar.contains("SUMMARY;LANGUAGE=es:") && calendar.contains("DESCRIPTION;LANGUAGE=es:")
    );
    let (_, calendar, _) = run(
        &["answer", "-", "--ics"],
        &asked.replace("Arce Noruego", "ACPL"),
    );
    assert!(!calendar.contains("LANGUAGE"), "{calendar}");
    for (wrong, says) in [
        ("{\"x\":1}", "aquí no hay `x`"),
        ("[]", "una pregunta es un objeto JSON"),
        (
            "{\"version\":1,\"stems\":[{\"diameter\":\"32 lb\"}]}",
            "Diámetro del tronco",
        ),
    ] {
        let (code, said, _) = run(&["answer", "-", "--text", "--lang", "es"], wrong);
        assert!(code == 2 && said.contains(says), "{said}");
        speaks_spanish(&said);
    }
    let (code, said, _) = run(
        &[
            "year",
            "--place",
            "Madison, WI",
            "--year",
            "2027",
            "--lang",
            "es-MX",
        ],
        "",
    );
    assert!(code == 0 && said.contains("arce noruego   "), "{said}");
    speaks_spanish(&said);
    let one = [
        "year",
        "--place",
        "43.07,-89.4,270 m",
        "--species",
        "arce noruego",
        "--lang",
        "es",
    ];
    let (code, said, _) = run(&one, "");
    assert!(
        code == 0 && said.starts_with("arce noruego (Acer platanoides), "),
        "{said}"
    );
    speaks_spanish(&said);
    for place in ["Springfield", "Nosuchplaceatall", "95,10"] {
        let (code, _, error) = run(&["year", "--place", place, "--lang", "es"], "");
        assert!(code == 1 && error.contains("Detenido: "), "{error}");
        speaks_spanish(&error);
    }
}

/// A comma or a point parts the decimals in every language; what may be a thousand is asked about in each.
#[test]
fn a_decimal_comma_and_a_decimal_point_are_read_in_every_language() {
    for lang in ["en", "es", "es-ES"] {
        let answer = |size: &str| {
            let asked = format!(
                "{{\"version\":1,\"species\":\"ACPL\",\"stems\":[{{\"diameter\":\"{size}\"}}],\"date\":\"2027-06-12\",\"none_in_reach\":true,\"line_within_reach\":\"no\"}}"
            );
            let (code, said, _) = run(&["answer", "-", "--lang", lang], &asked);
            (code, serde_json::from_str::<Value>(&said).expect("JSON"))
        };
        for size in ["1,5", "1.5", "1 1/2"] {
            let (code, said) = answer(size);
            assert_eq!(
                (code, &said["stems"][0]["dbh_mm"]),
                (0, &38.1.into()),
                "{lang}: {size}"
            );
        }
        for size in ["1,234", "1.234,5", "1,234.5"] {
            let (code, said) = answer(size);
            assert_eq!(
                (code, &said["problems"][0]["code"]),
                (2, &"ambiguous".into()),
                "{lang}: {size}: {said}"
            );
        }
    }
}

/// Spain has words of its own in the trade, and a decimal comma; all else is as in Spanish.
#[test]
fn in_spain_numbers_have_a_comma_and_tools_their_names_there() {
    let asked = r#"{"version":1,"species":"ACPL","units":"metric","stems":[{"diameter":"36,8"}],"date":"2027-06-12","none_in_reach":true,"line_within_reach":"no"}"#;
    let said = |lang: &str| run(&["answer", "-", "--text", "--full", "--lang", lang], asked).1;
    let (spain, other) = (said("es-ES"), said("es"));
    assert!(
        spain.contains("36,8 cm") && !spain.contains("36.8"),
        "{spain}"
    );
    assert!(
        other.contains("36.8 cm") && !other.contains("36,8"),
        "{other}"
    );
    assert!(spain.contains("gafas de protección") && other.contains("lentes de seguridad"));
    assert!(spain.contains("arce noruego"), "{spain}");
    assert_eq!(said("es-MX"), other);
}
