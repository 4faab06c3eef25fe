//! What takes time to make is kept under the target folder, so that the next build finds it.

use std::path::Path;

/// The bytes of a file that is kept, or what `make` makes, which is kept then: under its name only once it is whole. Where
/// it can't be kept it is made again the next time.
///
/// # Errors
/// Those of `make`.
pub(crate) fn kept<E>(
    file: &Path,
    make: impl FnOnce() -> Result<Vec<u8>, E>,
) -> Result<Vec<u8>, E> {
    if let Ok(bytes) = std::fs::read(file) {
        return Ok(bytes);
    }
    let bytes = make()?;
    let ending = file.extension().unwrap_or_default().to_string_lossy();
    let half = file.with_extension(format!("{ending}-{}", std::process::id()));
    let folder = file.parent().unwrap_or(file);
    let _ = std::fs::create_dir_all(folder)
        .and_then(|()| std::fs::write(&half, &bytes))
        .and_then(|()| std::fs::rename(&half, file));
    Ok(bytes)
}

#[cfg(test)]
mod tests {
    use super::*;
    use anyhow::{Result, bail};

    #[test]
    fn what_was_made_once_is_found_and_what_failed_is_not_kept() -> Result<()> {
        let folder = std::env::temp_dir().join(format!("slipbark-kept-{}", std::process::id()));
        let file = folder.join("a.png");
        assert!(kept(&file, || bail!("no")).is_err());
        assert_eq!(kept(&file, || Ok::<_, anyhow::Error>(vec![1]))?, [1]);
        assert_eq!(kept(&file, || bail!("it is there"))?, [1]);
        std::fs::remove_dir_all(&folder)?;
        Ok(())
    }
}
