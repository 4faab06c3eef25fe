//! A group's own settings on the command line.

use super::{WHOLE, run};
use serde_json::{Value, json};
use std::path::PathBuf;

/// A folder of files, removed at the end.
struct Files(PathBuf);

impl Files {
    fn new(name: &str, files: &[(&str, &str)]) -> Self {
        let folder = std::env::temp_dir().join(format!("slipbark-{name}-{}", std::process::id()));
        std::fs::create_dir_all(&folder).expect("a folder");
        for (name, text) in files {
            std::fs::write(folder.join(name), text).expect("a file");
        }
        Self(folder)
    }

    fn at(&self, name: &str) -> String {
        self.0.join(name).to_str().expect("a plain name").to_owned()
    }
}

impl Drop for Files {
    fn drop(&mut self) {
        let _ = std::fs::remove_dir_all(&self.0);
    }
}

fn good() -> Value {
    json!({
        "schema": 1, "name": "River Friends", "species": { "list": "species.csv" },
        "contacts": [{ "kind": "professional", "name": "Elm Street Arborists", "phone": "555 010 0123", "checked": "2026-05-01" }],
        "tighten": { "max_size_for_volunteers_cm": 20 }
    })
}

#[test]
fn settings_are_checked_in_words_and_a_refusal_ends_with_2() {
    let bad = json!({ "schema": 1, "name": "<b>River</b>", "tighten": { "min_distance_factor": 0.5, "hide_cautions": true }, "color": 1 });
    let files = Files::new(
        "checked",
        &[
            ("good.json", &good().to_string()),
            ("species.csv", "code,first,alias_en\nACPL,yes,river maple\n"),
            ("bad.json", &bad.to_string()),
            ("text.json", "{\"schema\":1,\n"),
        ],
    );
    let (code, out, error) = run(&["settings", &files.at("good.json")], "");
    assert_eq!((code, error.as_str()), (0, ""));
    assert!(out.ends_with("can be used by River Friends.\n"), "{out}");
    let (code, out, _) = run(&["settings", &files.at("bad.json")], "");
    assert_eq!(code, 2);
    for line in [
        "name: Plain text only: no < or >, no script, no hidden signs.",
        "tighten.min_distance_factor: Under 1 it would loosen the distances. Give 1 or more.",
        "tighten.hide_cautions: No setting hides or loosens a stop or a caution. Take it out.",
        "color: This is not read. Check its spelling, or take it out. (a warning)",
    ] {
        assert!(out.lines().any(|it| it == line), "{line}\nis not in\n{out}");
    }
    let (code, out, _) = run(&["settings", &files.at("text.json")], "");
    assert_eq!(code, 2);
    assert!(
        out.starts_with("Line 2, column 0: this is not JSON"),
        "{out}"
    );
    let (code, _, error) = run(&["settings", &files.at("none.json")], "");
    assert_eq!(code, 1);
    assert!(error.contains("none.json"), "{error}");
    std::fs::remove_file(files.at("species.csv")).expect("it is there");
    let (code, out, _) = run(&["settings", &files.at("good.json")], "");
    assert_eq!(code, 2);
    assert!(
        out.contains("species.list: The list of species could not be had."),
        "{out}"
    );
}

#[test]
fn an_answer_under_settings_is_the_group_s_and_refused_settings_give_none() {
    let files = Files::new(
        "asked",
        &[
            ("good.json", &good().to_string()),
            ("species.csv", "code,note_en\nACPL,Ask Mara first.\n"),
            ("bad.json", r#"{"schema":1,"name":"A","stops":"none"}"#),
        ],
    );
    let question = WHOLE.replace("\"signs\":[\"cavity\"],", "");
    let settings = files.at("good.json");
    let (code, out, error) = run(&["answer", "-", "--settings", &settings], &question);
    assert_eq!((code, error.as_str()), (0, ""), "{out}");
    let answer: Value = serde_json::from_str(&out).expect("it prints JSON");
    assert_eq!(answer["outcome"], "professional");
    assert_eq!(answer["group"]["name"], "River Friends");
    assert_eq!(answer["group"]["stops"], true);
    let (_, plain, _) = run(&["answer", "-"], &question);
    let plain: Value = serde_json::from_str(&plain).expect("it prints JSON");
    assert_eq!(
        (&plain["outcome"], &plain["group"]),
        (&json!("do"), &Value::Null)
    );
    let (_, text, _) = run(
        &["answer", "-", "--text", "--settings", &settings],
        &question,
    );
    assert!(
        text.contains("Professional: Elm Street Arborists, 555 010 0123"),
        "{text}"
    );
    assert!(text.contains("River Friends: Ask Mara first."), "{text}");
    let bad = files.at("bad.json");
    let (code, out, error) = run(&["answer", "-", "--settings", &bad], &question);
    assert_eq!((code, out.as_str()), (2, ""));
    assert!(error.contains("stops: No setting hides"), "{error}");
}

/// Settings of other people reach no file but those beside them: not by dots, not from the root, not by a link.
#[test]
fn a_list_of_species_lies_beside_the_settings() {
    let files = Files::new("beside", &[("outside.csv", "code,first\nACPL,yes\n")]);
    let outside = files.at("outside.csv");
    let inner = files.0.join("inner");
    std::fs::create_dir_all(inner.join("lists")).expect("a folder");
    std::fs::copy(&outside, inner.join("lists/own.csv")).expect("a copy");
    #[cfg(unix)]
    std::os::unix::fs::symlink(&outside, inner.join("link.csv")).expect("a link");
    let told = |list: &str| {
        let mut settings = good();
        settings["species"]["list"] = list.into();
        let file = files.at("inner/settings.json");
        std::fs::write(&file, settings.to_string()).expect("a file");
        let (code, out, _) = run(&["settings", &file], "");
        (code, out)
    };
    for good in ["lists/own.csv", "./lists/own.csv"] {
        let (code, out) = told(good);
        assert_eq!(code, 0, "{good}: {out}");
    }
    let mut bad = vec!["../outside.csv", "lists/../../outside.csv", &outside];
    if cfg!(unix) {
        bad.push("link.csv");
    }
    for list in bad {
        let (code, out) = told(list);
        assert_eq!(code, 2, "{list}: {out}");
        assert!(out.contains("must lie in the folder"), "{list}: {out}");
    }
}

#[test]
fn a_file_of_fifty_million_bytes_is_refused_before_it_is_read() {
    let files = Files::new("large", &[("settings.json", &good().to_string())]);
    let file = files.at("settings.json");
    std::fs::write(files.at("species.csv"), "code,first\n".repeat(5_000_000)).expect("a file");
    let begun = std::time::Instant::now();
    let (code, out, _) = run(&["settings", &file], "");
    assert_eq!(code, 2);
    assert!(out.contains("too large: at most 1000 kB"), "a list: {out}");
    // What follows is no JSON, so only its length can be told.
    std::fs::write(&file, "[".repeat(50_000_000)).expect("a file");
    let (code, out, _) = run(&["settings", &file], "");
    assert_eq!(code, 2);
    assert!(
        out.contains("too large: at most 1000 kB"),
        "settings: {out}"
    );
    assert!(begun.elapsed().as_secs() < 20, "{:?}", begun.elapsed());
}
