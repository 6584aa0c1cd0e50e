//! Files with faults, for the tests that feed readers.

/// A file with some bytes changed, left out, put in or cut off.
pub fn with_faults(mut file: Vec<u8>, faults: &[(usize, u8, u8)]) -> Vec<u8> {
    for (at, what, byte) in faults {
        let at = at % file.len().max(1);
        if file.is_empty() {
            break;
        }
        match what {
            0 => file[at] = *byte,
            1 => drop(file.remove(at)),
            2 => file.insert(at, *byte),
            _ => file.truncate(at.max(1)),
        }
    }
    file
}
