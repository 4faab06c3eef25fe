//! The program as one file in a folder of its own, and what it prints of texts that other people wrote.

use super::{WHOLE, program, run};
use std::io::Write as _;
use std::path::PathBuf;
use std::process::{Command, Stdio};

/// An empty folder with nothing but a copy of the program in it, removed at the end.
struct Alone(PathBuf);

impl Alone {
    fn new(name: &str) -> Self {
        let folder = std::env::temp_dir().join(format!("slipbark-{name}-{}", std::process::id()));
        std::fs::create_dir_all(&folder).expect("a folder");
        std::fs::copy(program(), folder.join("copy")).expect("the program can be copied");
        Self(folder)
    }

    fn run(&self, arguments: &[&str], input: &str) -> (i32, String, String) {
        let mut process = Command::new(self.0.join("copy"))
            .current_dir(&self.0)
            .args(arguments)
            .env_clear()
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .stderr(Stdio::piped())
            .spawn()
            .expect("the copy can be started");
        // A command that reads nothing may have ended before.
        let _ = process
            .stdin
            .take()
            .expect("a pipe")
            .write_all(input.as_bytes());
        let output = process.wait_with_output().expect("it ends");
        let text = |bytes| String::from_utf8(bytes).expect("it prints UTF-8");
        (
            output.status.code().expect("it ends by itself"),
            text(output.stdout),
            text(output.stderr),
        )
    }
}

impl Drop for Alone {
    fn drop(&mut self) {
        let _ = std::fs::remove_dir_all(&self.0);
    }
}

#[test]
fn a_copy_of_the_program_answers_anywhere_as_it_does_in_the_project() {
    let alone = Alone::new("alone");
    for question in [
        WHOLE.to_owned(),
        WHOLE.replace(
            r#""place":{"latitude":"42.36","longitude":"-71.06","elevation":"15 m"},"region":"US-MA""#,
            r#""region":"US-WI""#,
        ),
    ] {
        let here = alone.run(&["answer", "-"], &question);
        assert_eq!((here.0, here.2.as_str()), (0, ""), "{}", here.1);
        assert_eq!(here, run(&["answer", "-"], &question));
    }
    let year = ["year", "--place", "Madison, WI", "--year", "2027"];
    let here = alone.run(&year, "");
    assert_eq!(here.0, 0, "{}", here.2);
    assert_eq!(here, run(&year, ""));
    // What does need the project's files says so.
    let (code, _, error) = alone.run(&["build", "--out", "site"], "");
    assert_eq!(code, 1);
    assert!(error.contains("Cargo.toml"), "{error}");
}

#[test]
fn no_control_character_and_no_mark_of_direction_reaches_the_terminal() {
    let odd = "x\u{1b}[2J\u{202e}y\u{9b}z\r";
    let is_odd = |text: &str| text.contains(['\u{1b}', '\u{202e}', '\u{9b}', '\r', '\u{7f}']);
    assert!(is_odd(odd), "the check can fail");
    let mut question: serde_json::Value = serde_json::from_str(WHOLE).expect("JSON");
    question["species"] = odd.into();
    let question = question.to_string();
    let key = format!("{{\"version\":1,\"{}\":2}}", "a\u{202e}b\u{85}");
    let file = "no\u{1b}such\u{202e}.json";
    for (arguments, input) in [
        (vec!["answer", "-"], &*question),
        (vec!["answer", "--text", "-"], &question),
        (vec!["answer", "-"], &key),
        (vec!["answer", "--text", "-"], &key),
        (vec!["answer", file], ""),
        (vec!["settings", file], ""),
        (vec!["year", "--place", odd], ""),
        (
            vec!["year", "--place", "42.36,-71.06", "--species", odd],
            "",
        ),
        (vec![odd], ""),
        (vec!["answer", "-", odd], ""),
    ] {
        let (code, out, error) = run(&arguments, input);
        assert_ne!(code, 0, "{arguments:?}");
        assert!(
            !is_odd(&out) && !is_odd(&error),
            "{arguments:?}: {out:?} {error:?}"
        );
        assert!(
            !(out + &error).is_empty(),
            "{arguments:?} is told of nothing"
        );
    }
}
