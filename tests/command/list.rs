//! `list`: an answer for every row, the same as one tree a call; what goes where; exit codes.

use crate::{root, run};
use calc_list::{Decisions, Is, ListContext, read_whole};
use serde_json::Value;

const TODAY: &str = "2027-05-01";

/// An invented list: what is answered, what is to be mended, what is no tree.
const LIST: &str = "Tag,Species,DBH (in),Target,Line within reach,Status,Notes
1,Norway maple,14,none,no,alive,
2,Black locust,9 1/2,path 200 ft,no,alive,\"by the gate, left\"
3,Tree-of-heaven,12,none,no,alive,=A1
4,Norway maple,14,none,no,alive,-
5,maple,9,none,no,alive,
6,Siberian elm,fourteen,none,no,alive,
7,Stump,,,,,
8,White mulberry,12; 9; 7,building 30 ft,no,alive,
9,Scots pine,11,,,,
10,Norway maple,8,none,no,fallen,
11,Norway maple,8,none,no,skip,
";

fn file(name: &str, text: &str) -> String {
    let folder = std::path::Path::new(env!("CARGO_TARGET_TMPDIR")).join("lists");
    std::fs::create_dir_all(&folder).expect("a folder");
    let path = folder.join(name);
    std::fs::write(&path, text).expect("a file");
    path.to_string_lossy().into_owned()
}

fn lines(out: &str) -> Vec<Value> {
    out.lines()
        .map(|line| serde_json::from_str(line).expect("a line of JSON"))
        .collect()
}

#[test]
fn every_row_has_a_line_and_the_answers_are_those_of_one_tree_a_call() {
    let name = file("whole.csv", LIST);
    let (code, out, error) = run(
        &[
            "list", &name, "--whole", "--today", TODAY, "--region", "US-MA",
        ],
        "",
    );
    assert_eq!(code, 0, "{error}");
    let printed = lines(&out);
    let options = ListContext {
        region: Some("US-MA".into()),
        today: TODAY.into(),
        ..ListContext::default()
    };
    let list = read_whole(
        calc_data::whole(),
        LIST.as_bytes(),
        &options,
        &Decisions::default(),
    )
    .expect("a list");
    assert_eq!(printed.len(), list.rows.len());
    let mut answered = 0;
    for (line, row) in printed.iter().zip(&list.rows) {
        assert_eq!(
            (&line["row"], &line["tree_id"]),
            (&row.row.into(), &row.tag.tree_id.clone().into())
        );
        let Is::Tree(typed, _) = &row.is else {
            assert!(
                line["outcome"].is_null() && line.get("answer").is_none(),
                "{line}"
            );
            continue;
        };
        if !line["reason"].is_null() {
            assert!(line["outcome"].is_null(), "{line}");
            continue;
        }
        let question = serde_json::to_string(typed).expect("a question");
        let (code, alone, error) = run(&["answer", "-"], &question);
        assert_eq!(code, 0, "{error}");
        let alone: Value = serde_json::from_str(&alone).expect("an answer");
        assert_eq!(line["answer"], alone, "row {}", row.row);
        assert_eq!(line["outcome"], alone["outcome"]);
        assert_eq!(line["method"], alone["headline_method"]);
        assert_eq!(line["by_professional"], alone["headline_by_professional"]);
        assert_eq!(line["advised_day"], alone["advised_day"]);
        assert_eq!(line["p"], alone["timing"]["probability"]);
        assert_eq!(line["zone_m"], alone["reach"]["zone_m"]);
        assert_eq!(line["reach_m"], alone["reach"]["two_heights_m"]);
        let ids = |name: &str, key: &str| -> Vec<Value> {
            let all = alone[name].as_array().expect("a list");
            all.iter().map(|one| one[key].clone()).collect()
        };
        assert_eq!(line["cautions"], Value::from(ids("cautions", "id")));
        assert_eq!(line["assumed"], Value::from(ids("assumed", "field")));
        let visits = line["visits"].as_array().expect("a list");
        for (visit, alone) in visits
            .iter()
            .zip(alone["visits"].as_array().expect("a list"))
        {
            for key in ["kind", "from", "to"] {
                assert_eq!(visit[key], alone[key], "row {}", row.row);
            }
        }
        if line["method"] == "bark_ring" && !line["minutes"].is_null() {
            for key in ["low", "likely", "high", "mean"] {
                assert_eq!(line["minutes"][key], alone["effort"][format!("{key}_min")]);
            }
            assert_eq!(line["ring_mm"], alone["stems"][0]["ring"]["better_mm"]);
        }
        answered += 1;
    }
    assert_eq!(answered, 6);
    let outcomes: Vec<&str> = printed
        .iter()
        .filter_map(|line| line["outcome"].as_str())
        .collect();
    assert!(
        outcomes.contains(&"do") && outcomes.contains(&"cannot_tell"),
        "{outcomes:?}"
    );
    let reasons: Vec<&str> = printed
        .iter()
        .filter_map(|line| line["reason"].as_str())
        .collect();
    assert_eq!(
        reasons,
        ["to_fix", "to_fix", "not_a_tree", "dead", "skipped"]
    );
}

#[test]
fn a_place_gives_each_row_its_own_season() {
    let list = "Tag,Species,DBH (in),Latitude,Longitude,Target\n1,Norway maple,14,42.36,-71.06,none\n2,Norway maple,14,34.05,-84.2,none\n3,Norway maple,14,,,none\n";
    let name = file("places.csv", list);
    let (code, out, error) = run(
        &["list", &name, "--today", TODAY, "--place", "47.6,-122.3"],
        "",
    );
    assert_eq!(code, 0, "{error}");
    let windows: Vec<String> = lines(&out)
        .iter()
        .map(|line| line["window"].to_string())
        .collect();
    assert!(
        windows[0] != windows[1] && windows[1] != windows[2],
        "{windows:?}"
    );
}

#[test]
fn problems_go_to_the_error_stream_in_both_languages() {
    let name = file("problems.csv", LIST);
    let arguments = ["list", &name, "--today", TODAY];
    let (_, out, error) = run(&arguments, "");
    assert!(
        error.starts_with("row,column,level,code,message\n"),
        "{error}"
    );
    assert!(
        error.contains("7,C,fix,not_a_number,\"Row 7, column C (DBH (in)): ")
            && error.contains("6,B,fix,genus_only,"),
        "{error}"
    );
    assert!(error.contains(",,note,counted,\"11 rows: 10 trees, 8 ready and 2 to fix; 1 row without a tree; 0 blank.\""), "{error}");
    let line = &lines(&out)[5];
    assert_eq!(line["problems"][0]["column"], "C");
    let spanish = [&arguments[..], &["--lang", "es-MX"]].concat();
    let (_, out, error) = run(&spanish, "");
    assert!(error.contains("Fila 7, columna C (DBH (in)): "), "{error}");
    assert_eq!(lines(&out)[6]["message"], "Aquí no hay un árbol.");
}

#[test]
fn the_list_with_its_columns_keeps_every_cell_and_is_read_again() {
    let name = file("columns.csv", LIST);
    let arguments = [
        "list", &name, "--csv", "--today", TODAY, "--region", "US-MA",
    ];
    let (code, once, _) = run(&arguments, "");
    assert_eq!(code, 0);
    let cells = |text: &str| -> Vec<Vec<String>> {
        let text = text.trim_start_matches('\u{feff}');
        let mut reader = csv::ReaderBuilder::new()
            .has_headers(false)
            .flexible(true)
            .from_reader(text.as_bytes());
        let rows = reader.records().map(|row| row.expect("a row"));
        rows.map(|row| row.iter().map(str::to_owned).collect())
            .collect()
    };
    let (before, after) = (cells(LIST), cells(&once));
    assert_eq!(before.len(), after.len());
    for (before, after) in before.iter().zip(&after) {
        assert_eq!(before[..], after[..before.len()]);
    }
    let at = |name: &str| after[0].iter().position(|it| it == name).expect(name);
    assert_eq!(after[1][at("plan_verdict")], "do");
    assert_eq!(after[5][at("plan_reason")], "to_fix");
    assert_eq!(after[7][at("plan_reason")], "not_a_tree");
    assert_eq!(after[1][at("plan_made_on")], TODAY);
    assert!(once.starts_with('\u{feff}') && once.contains("\r\n"));
    // Its own columns are dropped and made anew: a second time to the byte.
    let again = file("again.csv", &once);
    let arguments = [
        "list", &again, "--csv", "--today", TODAY, "--region", "US-MA",
    ];
    let (code, twice, error) = run(&arguments, "");
    assert_eq!((code, &twice), (0, &once), "{error}");
    assert!(error.contains("ours_dropped"), "{error}");
}

#[test]
fn a_column_asks_and_its_decision_is_taken() {
    let list =
        std::fs::read_to_string(root().join("tests/lists/demands/girth.csv")).expect("a list");
    let name = file("asks.csv", &list);
    let (code, out, error) = run(&["list", &name, "--today", TODAY], "");
    assert_eq!(code, 2, "{error}");
    assert!(error.contains("is this the girth?"), "{error}");
    // The file to fill in can be given back as it is.
    let decisions = file("asks.json", &out);
    let (code, out, error) = run(
        &["list", &name, "--today", TODAY, "--columns", &decisions],
        "",
    );
    assert_eq!(code, 0, "{error}");
    assert_eq!(lines(&out).len(), 11);
    for (text, part) in [
        ("{", "asks_bad.json"),
        (r#"{"Bark":{"unit":"cm"}}"#, "Bark"),
        (r#"{"DBH (cm)":{"unti":"cm"}}"#, "unti"),
    ] {
        let bad = file("asks_bad.json", text);
        let (code, _, error) = run(&["list", &name, "--decisions", &bad], "");
        assert!(code == 2 && error.contains(part), "{text}: {error}");
    }
}

#[test]
fn pieces_of_a_file_give_the_lines_of_the_whole() {
    let (header, rows) = LIST.split_once('\n').expect("a header");
    let columns: Vec<&str> = header.split(',').collect();
    let decisions = serde_json::json!({ "header": columns }).to_string();
    let decisions = file("pieces.json", &decisions);
    let rest = ["--today", TODAY, "--columns", &decisions];
    let (_, whole, _) = run(
        &[&["list", "-", "--first-row", "2"][..], &rest].concat(),
        rows,
    );
    let mut pieces = String::new();
    let all: Vec<&str> = rows.lines().collect();
    for (at, piece) in all.chunks(4).enumerate() {
        let first = (2 + at * 4).to_string();
        let input = piece.join("\n") + "\n";
        let arguments = [&["list", "-", "--first-row", &first][..], &rest].concat();
        let (_, out, _) = run(&arguments, &input);
        pieces.push_str(&out);
    }
    assert_eq!(pieces, whole);
    // What a piece can't know left aside, they are the lines of one process with the file.
    let name = file("pieces.csv", LIST);
    let (_, file_lines, _) = run(&["list", &name, "--today", TODAY], "");
    assert_eq!(lines(&whole), lines(&file_lines));
}

#[test]
fn what_is_no_list_or_has_no_answer_fails_with_what_to_do() {
    for (text, code, part) in [
        ("", 1, "nothing in it"),
        ("Tag,Species,DBH in\n", 1, "no row below"),
        ("Species\nNorway maple\n", 1, "one column"),
        (
            "Tag,Species,DBH in\n1,maple,14\n",
            1,
            "No row has an answer",
        ),
        ("Tag,Kind,DBH in\n1,x,14\n", 2, "No column names the trees"),
    ] {
        let (found, out, error) = run(&["list", "-"], text);
        assert_eq!(found, code, "{text}: {out}{error}");
        assert!(error.contains(part), "{text}: {error}");
    }
    for (arguments, part) in [
        (&["list", "no_such_file.csv"][..], "no_such_file.csv"),
        (&["list", "-", "--region", "XX-YY"], "--region XX-YY"),
        (&["list", "-", "--today", "soon"], "--today soon"),
        (&["list", "-", "--place", "Nosuchplaceatall"], "--place"),
    ] {
        let (code, _, error) = run(arguments, LIST);
        assert!(code != 0 && error.contains(part), "{arguments:?}: {error}");
    }
}

#[test]
fn words_for_people_add_up() {
    let (code, out, _) = run(&["list", "-", "--text", "--today", TODAY], LIST);
    assert_eq!(code, 0, "{out}");
    assert!(
        out.starts_with("11 rows: 10 trees, 8 ready and 2 to fix;"),
        "{out}"
    );
    let number = |line: &str| -> u64 {
        let digits = line.rsplit(": ").next().expect("a number");
        digits.trim().parse().unwrap_or(0)
    };
    let outcomes = [
        "Do: ",
        "Wait: ",
        "Another way: ",
        "Stop: ",
        "Can’t tell: ",
        "Done, left out or fallen: ",
    ];
    let sum: u64 = out
        .lines()
        .filter(|line| outcomes.iter().any(|name| line.starts_with(name)))
        .map(number)
        .sum();
    assert_eq!(sum, 8, "{out}");
}
