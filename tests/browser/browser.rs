//! One headless browser for one test, and what a test asks of it.

use crate::Outcome;
use fantoccini::wd::WebDriverCompatibleCommand;
use fantoccini::{Client, ClientBuilder};
use hyper_util::client::legacy::connect::HttpConnector;
use serde_json::{Value, json};
use std::io::{BufRead as _, BufReader};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

/// How long anything on a page may take before a test gives up on it.
const PATIENCE: Duration = Duration::from_secs(20);

/// The driver's process; it ends with the test, whatever happens.
struct Driver {
    process: Child,
    address: String,
}

impl Driver {
    /// Starts a driver on a free port, which it tells in a line: what stands there before the port. A port that was
    /// free may be taken before the driver has it; then it ends without a word, and is started again.
    fn start(program: &str, arguments: &[&str], before: &str) -> Self {
        (0..5)
            .find_map(|_| Self::try_start(program, arguments, before))
            .expect("the driver tells its port")
    }

    fn try_start(program: &str, arguments: &[&str], before: &str) -> Option<Self> {
        let mut process = Command::new(program)
            .args(arguments)
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .unwrap_or_else(|error| {
                panic!("{program} could not be started: install it, or run tests/all. ({error})")
            });
        let mut lines = BufReader::new(process.stdout.take().expect("a pipe")).lines();
        // Made at once, so that it is ended whatever comes.
        let mut driver = Self {
            process,
            address: String::new(),
        };
        let port = lines.by_ref().map_while(Result::ok).find_map(|line| {
            line.split_once(before)?
                .1
                .trim_end_matches('.')
                .parse::<u16>()
                .ok()
        })?;
        // The pipe is read to its end, or the driver would stop when it is full.
        std::thread::spawn(move || lines.map_while(Result::ok).for_each(drop));
        driver.address = format!("http://127.0.0.1:{port}");
        Some(driver)
    }
}

impl Drop for Driver {
    fn drop(&mut self) {
        let _ = self.process.kill();
        let _ = self.process.wait();
    }
}

/// A browser window.
#[derive(Clone)]
pub(crate) struct Browser {
    /// The driver's own commands.
    pub client: Client,
}

/// Opens Chromium, runs the test in it and closes it, also when it failed.
pub(crate) fn in_browser<Test, Steps>(test: Test)
where
    Test: FnOnce(Browser) -> Steps,
    Steps: Future<Output = Outcome> + Send + 'static,
{
    in_chromium(None, test);
}

/// The same with what an earlier browser has left in a folder, as after a restart of the device.
pub(crate) fn in_browser_of<Test, Steps>(profile: &std::path::Path, test: Test)
where
    Test: FnOnce(Browser) -> Steps,
    Steps: Future<Output = Outcome> + Send + 'static,
{
    in_chromium(Some(profile), test);
}

fn in_chromium<Test, Steps>(profile: Option<&std::path::Path>, test: Test)
where
    Test: FnOnce(Browser) -> Steps,
    Steps: Future<Output = Outcome> + Send + 'static,
{
    let driver = Driver::start("chromedriver", &["--port=0"], "successfully on port ");
    let mut arguments = vec![
        "--headless".to_owned(),
        "--no-sandbox".into(),
        "--disable-gpu".into(),
        "--no-first-run".into(),
        "--disable-background-networking".into(),
        "--disable-component-update".into(),
        "--disable-sync".into(),
        "--disable-dev-shm-usage".into(),
        "--window-size=1280,1000".into(),
        // No name leads anywhere: a page that asked another host would fail loudly.
        "--host-resolver-rules=MAP * ~NOTFOUND , EXCLUDE 127.0.0.1 , EXCLUDE localhost".into(),
    ];
    arguments.extend(profile.map(|folder| format!("--user-data-dir={}", folder.display())));
    let capabilities = json!({
        "goog:loggingPrefs": { "browser": "ALL", "performance": "ALL" },
        "goog:chromeOptions": { "args": arguments },
    });
    in_session(&driver, capabilities, test);
}

/// Opens Firefox, runs the test in it and closes it. Its driver keeps no log of the console or the network.
pub(crate) fn in_firefox<Test, Steps>(test: Test)
where
    Test: FnOnce(Browser) -> Steps,
    Steps: Future<Output = Outcome> + Send + 'static,
{
    let driver = Driver::start("geckodriver", &["--port", "0"], "Listening on 127.0.0.1:");
    let path = std::env::var_os("PATH").unwrap_or_default();
    let binary = std::env::split_paths(&path)
        .flat_map(|folder| ["firefox-esr", "firefox"].map(|name| folder.join(name)))
        .find(|program| program.is_file())
        .expect("Firefox is not on the path: install it (Debian: firefox-esr)");
    let capabilities = json!({
        "moz:firefoxOptions": { "binary": binary, "args": ["-headless", "--width=1280", "--height=1000"] },
    });
    in_session(&driver, capabilities, test);
}

fn in_session<Test, Steps>(driver: &Driver, capabilities: Value, test: Test)
where
    Test: FnOnce(Browser) -> Steps,
    Steps: Future<Output = Outcome> + Send + 'static,
{
    let runtime = tokio::runtime::Builder::new_current_thread()
        .enable_all()
        .build()
        .expect("a runtime");
    runtime.block_on(async {
        let Value::Object(capabilities) = capabilities else {
            unreachable!("it is an object")
        };
        let client = ClientBuilder::new(HttpConnector::new())
            .capabilities(capabilities)
            .connect(&driver.address)
            .await
            .expect("a session; are the browser and its driver of one version?");
        let browser = Browser {
            client: client.clone(),
        };
        let outcome = tokio::spawn(test(browser)).await;
        let closed = client.close().await;
        match outcome {
            Err(panic) => std::panic::resume_unwind(panic.into_panic()),
            Ok(Err(error)) => panic!("{error}"),
            Ok(Ok(())) => closed.expect("the session closes"),
        }
    });
}

impl Browser {
    /// Opens an address and waits until it has loaded.
    pub(crate) async fn open(&self, address: &str) -> Outcome {
        Ok(self.client.goto(address).await?)
    }

    /// Runs a script's body in the page and gives what it returns.
    pub(crate) async fn run(&self, script: &str) -> Result<Value, fantoccini::error::CmdError> {
        self.client.execute(script, Vec::new()).await
    }

    /// Runs a script that calls `done(value)` when it has one.
    pub(crate) async fn run_until_done(
        &self,
        script: &str,
    ) -> Result<Value, fantoccini::error::CmdError> {
        let script = format!("const done = arguments[arguments.length - 1]; {script}");
        self.client.execute_async(&script, Vec::new()).await
    }

    /// Waits until a script's expression is true.
    pub(crate) async fn until(&self, what: &str, expression: &str) -> Outcome {
        let began = Instant::now();
        loop {
            // While a page is being replaced there is nothing to run a script in.
            let value = self.run(&format!("return Boolean({expression});")).await;
            if matches!(value, Ok(Value::Bool(true))) {
                return Ok(());
            }
            if began.elapsed() > PATIENCE {
                let console = self.console().await.unwrap_or_default();
                let last = value.map_or_else(|error| error.to_string(), |value| value.to_string());
                return Err(format!(
                    "waited {PATIENCE:?} for {what}; last: {last}; console: {console:#?}"
                )
                .into());
            }
            tokio::time::sleep(Duration::from_millis(50)).await;
        }
    }

    /// Waits until the calculator in the page is ready.
    pub(crate) async fn until_ready(&self) -> Outcome {
        self.until(
            "the calculator",
            "document.querySelector('slipbark-tree-plan, #calculator')?.version",
        )
        .await?;
        let script = "document.querySelector('slipbark-tree-plan, #calculator').ready.then(() => done('ready'), (e) => done(String(e)));";
        let ready = self.run_until_done(script).await?;
        if ready == "ready" {
            Ok(())
        } else {
            Err(format!("the calculator failed: {ready}").into())
        }
    }

    /// Opens a page of any kind; where it holds the calculator, waits until that is ready.
    pub(crate) async fn open_page(&self, address: &str) -> Outcome {
        self.open(address).await?;
        let holds = "return Boolean(document.querySelector('slipbark-tree-plan, #calculator'));";
        if self.run(holds).await? == true {
            self.until_ready().await?;
        }
        Ok(())
    }

    /// Sets the page's width in CSS pixels, narrower than any window goes.
    pub(crate) async fn width(&self, width: u32) -> Outcome {
        self.window(width, 900).await
    }

    /// Sets the page's width and height in CSS pixels.
    pub(crate) async fn window(&self, width: u32, height: u32) -> Outcome {
        let parameters =
            json!({ "width": width, "height": height, "deviceScaleFactor": 1, "mobile": false });
        self.devtools("Emulation.setDeviceMetricsOverride", parameters)
            .await?;
        // As on a phone, the bar at the side takes no room: the page has all of the width.
        self.devtools("Emulation.setScrollbarsHidden", json!({ "hidden": true }))
            .await?;
        Ok(())
    }

    /// Sends a command of the browser's own protocol.
    pub(crate) async fn devtools(
        &self,
        name: &str,
        parameters: Value,
    ) -> Result<Value, fantoccini::error::CmdError> {
        let body = json!({ "cmd": name, "params": parameters });
        self.client
            .issue_cmd(Extension {
                path: "goog/cdp/execute",
                body,
            })
            .await
    }

    async fn log(&self, kind: &str) -> Result<Vec<Value>, fantoccini::error::CmdError> {
        let entries = self
            .client
            .issue_cmd(Extension {
                path: "se/log",
                body: json!({ "type": kind }),
            })
            .await?;
        Ok(entries.as_array().cloned().unwrap_or_default())
    }

    /// Warnings and errors in the console since the last call.
    pub(crate) async fn console(&self) -> Result<Vec<String>, fantoccini::error::CmdError> {
        let entries = self.log("browser").await?;
        let bad = entries
            .iter()
            .filter(|entry| entry["level"] == "SEVERE" || entry["level"] == "WARNING");
        Ok(bad.map(|entry| entry["message"].to_string()).collect())
    }

    /// Fails when the console has a warning or an error.
    pub(crate) async fn expect_quiet(&self) -> Outcome {
        let console = self.console().await?;
        assert!(
            console.is_empty(),
            "the console should be empty: {console:#?}"
        );
        Ok(())
    }

    /// The addresses of all requests since the last call.
    pub(crate) async fn requests(&self) -> Result<Vec<String>, fantoccini::error::CmdError> {
        let entries = self.log("performance").await?;
        let sent = entries.iter().filter_map(|entry| {
            let message: Value = serde_json::from_str(entry["message"].as_str()?).ok()?;
            let message = &message["message"];
            (message["method"] == "Network.requestWillBeSent").then(|| {
                message["params"]["request"]["url"]
                    .as_str()
                    .map(str::to_owned)
            })?
        });
        Ok(sent.collect())
    }

    /// What came over the net since the last call: bytes with their headers, as sent.
    pub(crate) async fn bytes_received(&self) -> Result<f64, fantoccini::error::CmdError> {
        let entries = self.log("performance").await?;
        let came = entries.iter().filter_map(|entry| {
            let message: Value = serde_json::from_str(entry["message"].as_str()?).ok()?;
            let message = &message["message"];
            (message["method"] == "Network.loadingFinished")
                .then(|| message["params"]["encodedDataLength"].as_f64())?
        });
        Ok(came.sum())
    }

    /// Fails when any request since the last call went elsewhere than to `origins`.
    pub(crate) async fn expect_requests_only_to(&self, origins: &[&str]) -> Outcome {
        let requests = self.requests().await?;
        assert!(
            !requests.is_empty(),
            "the browser should have logged requests"
        );
        for request in &requests {
            let own = origins.iter().any(|origin| request.starts_with(origin));
            assert!(own, "a request went to {request}");
        }
        Ok(())
    }
}

/// A command that only this driver knows.
#[derive(Debug)]
struct Extension {
    path: &'static str,
    body: Value,
}

impl WebDriverCompatibleCommand for Extension {
    fn endpoint(
        &self,
        base: &url::Url,
        session: Option<&str>,
    ) -> Result<url::Url, url::ParseError> {
        base.join(&format!(
            "session/{}/{}",
            session.unwrap_or_default(),
            self.path
        ))
    }

    fn method_and_body(&self, _: &url::Url) -> (http::Method, Option<String>) {
        (http::Method::POST, Some(self.body.to_string()))
    }
}
