//! Writes files whole or not at all: beside their place first, then moved into it. Devices and pipes are
//! written into: whatever was moved into their place would be there instead of them.

use std::format;
use std::io::Write;
use std::path::{Path, PathBuf};
use std::prelude::rust_2024::*;

use tempfile::NamedTempFile;

use super::failure::Failure;

/// The folder that a file stands in.
fn folder(path: &Path) -> &Path {
    match path.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder,
        _ => Path::new("."),
    }
}

fn failed(path: &Path, error: &std::io::Error) -> Failure {
    Failure::unwritten(format!("{} cannot be written: {}; nothing was changed", path.display(), error.kind()))
}

/// Refuses to write over what is read, and two things into one file.
pub(crate) fn apart(read: Option<&Path>, written: &[&Path]) -> Result<(), Failure> {
    let read = read.filter(|path| path.as_os_str() != "-").map(place);
    for (index, path) in written.iter().enumerate() {
        let place = place(path);
        if read.as_ref() == Some(&place) {
            return Err(Failure::input(format!(
                "{} is the shoot file itself: name another file to write to; nothing was changed",
                path.display()
            )));
        }
        if !is_stream(path) && written.iter().take(index).any(|other| self::place(other) == place) {
            return Err(Failure::input(format!(
                "{} is to be written twice: name two files; nothing was changed",
                path.display()
            )));
        }
    }
    Ok(())
}

/// Where a file stands, or would stand, whichever way it is named.
fn place(path: &Path) -> PathBuf {
    let known = std::fs::canonicalize(path).ok();
    let new = || Some(std::fs::canonicalize(folder(path)).ok()?.join(path.file_name()?));
    known.or_else(new).unwrap_or_else(|| path.to_path_buf())
}

/// Whether it is a device, a pipe or the like.
fn is_stream(path: &Path) -> bool {
    std::fs::metadata(path).is_ok_and(|known| !known.is_file() && !known.is_dir())
}

/// Writes a file, or puts another in its place.
fn whole(path: &Path, bytes: &[u8]) -> Result<(), Failure> {
    all(&[(path.to_path_buf(), bytes.to_vec())])
}

/// Writes several files, or none of them: all are written beside their places before the first is moved.
pub(crate) fn all(files: &[(PathBuf, Vec<u8>)]) -> Result<(), Failure> {
    let mut ready = Vec::new();
    let (streams, files): (Vec<_>, Vec<_>) = files.iter().partition(|(path, _)| is_stream(path));
    for (path, bytes) in files {
        ready.push((path, beside(path, bytes).map_err(|error| failed(path, &error))?));
    }
    for (path, bytes) in streams {
        let opened = std::fs::OpenOptions::new().write(true).open(path);
        opened.and_then(|mut stream| stream.write_all(bytes)).map_err(|error| failed(path, &error))?;
    }
    for (path, (beside, target)) in ready {
        beside.persist(target).map_err(|error| failed(path, &error.error))?;
    }
    Ok(())
}

/// The file's bytes in a file beside it, and where that is to be moved.
fn beside(path: &Path, bytes: &[u8]) -> std::io::Result<(NamedTempFile, PathBuf)> {
    // A link stays one: what it leads to is exchanged.
    let target: PathBuf = std::fs::canonicalize(path).unwrap_or_else(|_| path.to_path_buf());
    let mut beside = NamedTempFile::new_in(folder(&target))?;
    beside.write_all(bytes)?;
    beside.as_file().sync_all()?;
    match std::fs::metadata(&target) {
        Ok(known) if known.is_dir() => return Err(std::io::ErrorKind::IsADirectory.into()),
        Ok(known) if known.permissions().readonly() => {
            return Err(std::io::ErrorKind::PermissionDenied.into());
        }
        Ok(known) => beside.as_file().set_permissions(known.permissions())?,
        Err(error) if error.kind() == std::io::ErrorKind::NotFound => readable(beside.as_file())?,
        Err(error) => return Err(error),
    }
    Ok((beside, target))
}

/// What anybody may read, as files usually are; temporary ones are their owner's alone.
#[cfg(unix)]
fn readable(file: &std::fs::File) -> std::io::Result<()> {
    use std::os::unix::fs::PermissionsExt;
    file.set_permissions(std::fs::Permissions::from_mode(0o644))
}

#[cfg(not(unix))]
fn readable(_: &std::fs::File) -> std::io::Result<()> {
    Ok(())
}

/// Exchanges a file's text for another, unless somebody has changed it since it was read.
pub(crate) fn exchanged(path: &Path, read: &[u8], bytes: &[u8]) -> Result<(), Failure> {
    match std::fs::read(path) {
        Ok(now) if now == read => whole(path, bytes),
        Ok(_) => {
            Err(Failure::unwritten(format!("{} was changed meanwhile; nothing was written", path.display())))
        }
        Err(error) => Err(failed(path, &error)),
    }
}
