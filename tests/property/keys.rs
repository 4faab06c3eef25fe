//! What reads and writes a question key by key has the keys that the question has, in its order.

use calc::models::calibrate::Rate;
use calc::question::{
    HeightAidTyped, Keyed, LeafOutTyped, PlaceTyped, StemTyped, TargetTyped, TimedTyped, Typed,
    VisitTyped, slot_of,
};
use serde_json::Value;

fn holds(record: &mut dyn Keyed, written: Result<String, serde_json::Error>) {
    let written = written.expect("it is data");
    let known: Value = serde_json::from_str(&written).expect("it is JSON");
    let keys = record.keys();
    assert_eq!(Some(keys.len()), known.as_object().map(|it| it.len()));
    let places = keys.iter().map(|key| {
        let place = written.find(&format!("\"{}\":", key.name));
        place.unwrap_or_else(|| panic!("{} is no key of it", key.name))
    });
    assert!(places.is_sorted(), "{written}");
    for key in keys {
        assert!(
            slot_of(record, key.name).is_some(),
            "{} has no place",
            key.name
        );
    }
    assert!(slot_of(record, "no key").is_none());
}

#[test]
fn the_keys_of_each_record_are_those_that_the_question_has() {
    macro_rules! each {
        ($($record:expr),+) => { $({
            let mut record = $record;
            let written = serde_json::to_string(&record);
            holds(&mut record, written);
        })+ };
    }
    each!(
        Typed::default(),
        StemTyped::default(),
        TargetTyped::default(),
        PlaceTyped::default(),
        LeafOutTyped::default(),
        HeightAidTyped::default(),
        TimedTyped::default(),
        VisitTyped::default(),
        Rate {
            log_mean: 0.0,
            log_sd: 1.0
        }
    );
}
