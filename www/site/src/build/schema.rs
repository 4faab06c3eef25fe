//! The interface's types for other people's tools: JSON schemas and TypeScript,
//! both generated from the types that read and write it.

use crate::build::interface;
use anyhow::{Result, bail};
use calc::answer::Answer;
use calc::question::Typed;
use std::any::TypeId;
use std::collections::{BTreeMap, BTreeSet};
use ts_rs::{TS, TypeVisitor};

/// The JSON schema of a question.
///
/// # Errors
/// When it can't be written as JSON.
pub(crate) fn question() -> Result<String> {
    Ok(serde_json::to_string_pretty(&schemars::schema_for!(Typed))?)
}

/// The JSON schema of an answer.
///
/// # Errors
/// When it can't be written as JSON.
pub(crate) fn answer() -> Result<String> {
    Ok(serde_json::to_string_pretty(&schemars::schema_for!(
        Answer
    ))?)
}

/// The JSON schema of a group's settings.
///
/// # Errors
/// When it can't be written as JSON.
pub(crate) fn settings() -> Result<String> {
    let schema = schemars::schema_for!(calc::question::settings::shape::SettingsShape);
    Ok(serde_json::to_string_pretty(&schema)?)
}

/// The JSON schema of plan.json.
///
/// # Errors
/// When it can't be written as JSON.
pub(crate) fn plan() -> Result<String> {
    let schema = schemars::schema_for!(calc_plan::PlanFile);
    Ok(serde_json::to_string_pretty(&schema)?)
}

/// Collects the declarations of a type and of all that it is made of.
#[derive(Default)]
struct Declarations {
    seen: BTreeSet<TypeId>,
    found: BTreeMap<String, BTreeSet<String>>,
}

impl TypeVisitor for Declarations {
    fn visit<T: TS + 'static + ?Sized>(&mut self) {
        if !self.seen.insert(TypeId::of::<T>()) {
            return;
        }
        // Numbers, texts and lists have no declaration of their own.
        if T::output_path().is_some() {
            self.found.entry(T::ident()).or_default().insert(T::decl());
        }
        T::visit_dependencies(self);
        T::visit_generics(self);
    }
}

/// TypeScript types of what `v1/slipbark.js` exports.
///
/// # Errors
/// When two types share a name, which TypeScript would merge.
pub(crate) fn typescript() -> Result<String> {
    let mut question = Declarations::default();
    question.visit::<Typed>();
    let mut answer = Declarations::default();
    answer.visit::<Answer>();
    let mut out =
        String::from("// Generated from the types that read questions and write answers.\n");
    for (name, declared) in &question.found {
        let Some(declared) = one(declared) else {
            bail!("two types of the question are called {name}");
        };
        // What was not typed may be left out: version, species, a stem and a day are missed
        // as problems of the question, not by its type.
        out.push_str(&format!("export {}\n", optional(declared)));
    }
    for (name, declared) in &answer.found {
        let Some(declared) = one(declared) else {
            bail!("two types of the answer are called {name}");
        };
        if !question.found.contains_key(name) {
            out.push_str(&format!("export {declared}\n"));
        }
    }
    out.push_str(
        "export type Question = Typed;\n\
         export type Problem = { field: string, code: string, message: string, };\n\
         export type Problems = { problems: Array<Problem>, };\n\
         /** With `changes: false` the search for what would change the answer is left out, and `changes` is empty. */\n\
         export type AnswerOptions = { changes?: boolean, };\n\
         /** Answers a question, or gives every problem of a bad one. It never throws. */\n\
         export function answer(question: Question, options?: AnswerOptions): Answer | Problems;\n\
         /** The version of the calculator. */\n\
         export function version(): string;\n\
         /** The version of the tables behind it. */\n\
         export function dataVersion(): string;\n",
    );
    out += &interface::typescript();
    Ok(out)
}

fn one(declared: &BTreeSet<String>) -> Option<&String> {
    declared.first().filter(|_| declared.len() == 1)
}

/// A declaration with a question mark after each key of its object. Each key
/// stands at the beginning of a line; between them stand comments.
fn optional(declared: &str) -> String {
    let lines = declared.lines().map(|line| match line.split_once(": ") {
        Some((key, kind)) if key.chars().all(|c| c.is_ascii_alphanumeric() || c == '_') => {
            format!("{key}?: {kind}")
        }
        _ => line.trim_end().to_owned(),
    });
    lines.collect::<Vec<_>>().join("\n")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_key_of_a_question_is_in_its_schema_and_its_types() {
        let typed = serde_json::to_value(Typed::default()).unwrap();
        let schema: serde_json::Value = serde_json::from_str(&question().unwrap()).unwrap();
        let types = typescript().unwrap();
        for name in typed.as_object().unwrap().keys() {
            assert!(
                schema["properties"].get(name).is_some(),
                "{name} is not in the schema"
            );
            assert!(
                types.contains(&format!("{name}?: ")),
                "{name} is not in the types"
            );
        }
        assert_eq!(
            schema["additionalProperties"], false,
            "an unknown key is a problem"
        );
        assert!(types.contains("export type Answer = "), "{types}");
        let call = "answer(question: Question, options?: AnswerOptions): Answer | Problems;";
        assert!(types.contains(call), "{types}");
    }

    /// The schema says what the reader reads: the same keys, each told what it is.
    #[test]
    fn the_schema_of_settings_has_the_keys_that_are_read() {
        let schema: serde_json::Value = serde_json::from_str(&settings().unwrap()).unwrap();
        let shape = |path: &str| match path {
            "" => &schema,
            "place" => &schema["$defs"]["PlaceOfSettings"],
            "species" => &schema["$defs"]["SpeciesShape"],
            "contacts[]" => &schema["$defs"]["ContactShape"],
            "codes[]" => &schema["$defs"]["CodeShape"],
            "tighten" => &schema["$defs"]["TightenShape"],
            "crew" => &schema["$defs"]["CrewShape"],
            other => panic!("{other} has no shape"),
        };
        for (path, keys) in calc::question::settings::KEYS {
            let known = shape(path)["properties"].as_object().expect(path);
            let mut read: Vec<&str> = keys.to_vec();
            read.sort_unstable();
            assert_eq!(known.keys().collect::<Vec<_>>(), read, "{path}");
            for (key, told) in known {
                assert!(
                    told["description"].as_str().is_some_and(|it| it.len() > 3),
                    "{path}.{key}"
                );
            }
        }
        let required: Vec<_> = schema["required"].as_array().unwrap().iter().collect();
        assert_eq!(required, ["schema", "name"]);
    }

    #[test]
    fn the_schema_of_an_answer_names_its_parts() {
        let schema: serde_json::Value = serde_json::from_str(&answer().unwrap()).unwrap();
        for name in ["outcome", "stems", "if", "sources"] {
            assert!(schema["properties"].get(name).is_some(), "{name}");
        }
    }

    /// What a plan leaves out where there is nothing to say is not required of it.
    #[test]
    fn the_schema_of_a_plan_requires_only_what_each_plan_has() {
        let schema: serde_json::Value =
            serde_json::from_str(&super::plan().expect("a schema")).expect("JSON");
        let required = |of: &serde_json::Value| -> Vec<String> {
            let names = of["required"].as_array().into_iter().flatten();
            names.map(|name| name.to_string()).collect()
        };
        let parts = schema["$defs"].as_object().expect("parts");
        let all: Vec<String> = parts.values().chain([&schema]).flat_map(required).collect();
        assert!(all.contains(&"\"gap_percent\"".to_owned()), "{all:?}");
        for left_out in [
            "walk_routed",
            "after",
            "visits_before",
            "land",
            "crown_limit_m2",
            "crown_used_m2",
            "crown_m2",
            "suggest",
            "terms",
        ] {
            assert!(!all.contains(&format!("\"{left_out}\"")), "{left_out}");
        }
    }
}
