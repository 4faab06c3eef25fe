//! Filling the calculator in as a person does: clicks and keys, no shortcuts.

use crate::Outcome;
use crate::browser::Browser;
use fantoccini::Locator;
use fantoccini::actions::{InputSource as _, KeyAction, KeyActions};
use fantoccini::elements::Element;
use fantoccini::error::CmdError;
use fantoccini::key::Key;

/// The sentence of the answer in the calculator of the page, once the answer stands there whole: the card is painted
/// before what comes under it.
pub(crate) const ANSWER: &str = "document.querySelector('slipbark-tree-plan').shadowRoot.querySelector('.answer-region:not([aria-busy]) .say')";

impl Browser {
    /// Finds an element inside the calculator.
    pub(crate) async fn in_calculator(&self, css: &str) -> Result<Element, CmdError> {
        let host = self.client.find(Locator::Css("slipbark-tree-plan")).await?;
        host.shadow_root().await?.find(Locator::Css(css)).await
    }

    /// Opens the form that an answer has folded away, and the part of it that improves the estimate, where what is looked
    /// for stands in it: as a reader presses their lines.
    async fn unfold(&self, css: &str) -> Outcome {
        let open = format!(
            "const root = document.querySelector('slipbark-tree-plan')?.shadowRoot;
             const wanted = root?.querySelector(String.raw`{css}`);
             for (let at = wanted?.parentElement; at; at = at.parentElement) {{
               if (at.matches('.asked, .more, .give') && wanted.closest('summary')?.parentElement !== at) at.open = true;
             }}"
        );
        self.run(&open).await?;
        Ok(())
    }

    /// Presses what can be pressed inside the calculator.
    pub(crate) async fn press(&self, css: &str) -> Outcome {
        self.unfold(css).await?;
        let element = self
            .in_calculator(css)
            .await
            .map_err(|error| format!("{css}: {error}"))?;
        element
            .click()
            .await
            .map_err(|error| format!("{css}: {error}"))?;
        Ok(())
    }

    /// Types into a field of the calculator.
    pub(crate) async fn type_into(&self, css: &str, text: &str) -> Outcome {
        self.unfold(css).await?;
        let element = self
            .in_calculator(css)
            .await
            .map_err(|error| format!("{css}: {error}"))?;
        element.send_keys(text).await?;
        Ok(())
    }

    /// Types into a field in place of what stands in it.
    pub(crate) async fn type_over(&self, css: &str, text: &str) -> Outcome {
        self.unfold(css).await?;
        let element = self
            .in_calculator(css)
            .await
            .map_err(|error| format!("{css}: {error}"))?;
        element.clear().await?;
        element.send_keys(text).await?;
        Ok(())
    }

    /// Gives keys to whatever has the focus.
    pub(crate) async fn keys(&self, keys: &[char]) -> Outcome {
        let mut actions = KeyActions::new("keyboard".into());
        for key in keys {
            actions = actions
                .then(KeyAction::Down { value: *key })
                .then(KeyAction::Up { value: *key });
        }
        Ok(self.client.perform_actions(actions).await?)
    }

    /// Presses Tab until an element of the calculator has the focus; gives how often.
    pub(crate) async fn tab_to(
        &self,
        css: &str,
    ) -> Result<usize, Box<dyn std::error::Error + Send + Sync>> {
        let there = format!(
            "return Boolean(document.querySelector('slipbark-tree-plan').shadowRoot.activeElement?.matches(`{css}`));"
        );
        for presses in 1..=80 {
            self.keys(&[Key::Tab.into()]).await?;
            if self.run(&there).await? == true {
                return Ok(presses);
            }
        }
        Err(format!("Tab does not lead to {css}").into())
    }

    /// Chooses an invented tree with nothing in reach: a Norway maple of 14 1/2 in, on a day of June.
    pub(crate) async fn fill_in_a_tree(&self) -> Outcome {
        self.type_into("#f-find", "norway").await?;
        self.press("input[name=species][value='Norway maple']")
            .await?;
        self.type_into("[name='stems[0].diameter']", "14 1/2")
            .await?;
        self.press("#f-targets-0-kind option[value=nothing]")
            .await?;
        self.press("input[name=line_within_reach][value=no]")
            .await?;
        self.type_over("#f-day", "June 12 2027").await
    }

    /// Asks for the answer and waits until it stands there; gives its first sentence.
    pub(crate) async fn show_the_answer(
        &self,
    ) -> Result<String, Box<dyn std::error::Error + Send + Sync>> {
        self.press("button[type=submit]").await?;
        self.until("the answer", ANSWER).await?;
        let said = self.run(&format!("return {ANSWER}.textContent;")).await?;
        Ok(said.as_str().unwrap_or_default().to_owned())
    }

    /// Opens a page, fills in the invented tree and asks for its answer; gives its first sentence.
    pub(crate) async fn open_an_answer(
        &self,
        address: &str,
    ) -> Result<String, Box<dyn std::error::Error + Send + Sync>> {
        self.open(address).await?;
        self.until_ready().await?;
        self.fill_in_a_tree().await?;
        self.show_the_answer().await
    }

    /// Types the point of Boston, as the climate file has it, into fields that are folded away until asked for.
    pub(crate) async fn type_the_point_of_boston(&self) -> Outcome {
        self.run("document.querySelector('slipbark-tree-plan').shadowRoot.querySelectorAll('form details').forEach((fold) => { fold.open = true; });")
            .await?;
        self.type_into("[name='place.latitude']", "42.36").await?;
        self.type_into("[name='place.longitude']", "-71.06").await?;
        self.keys(&[Key::Tab.into()]).await
    }

    /// The outcome of the answer that stands in the page.
    pub(crate) async fn outcome(&self) -> Result<String, CmdError> {
        let outcome = self
            .run("return document.querySelector('slipbark-tree-plan').result?.outcome ?? '';")
            .await?;
        Ok(outcome.as_str().unwrap_or_default().to_owned())
    }
}
