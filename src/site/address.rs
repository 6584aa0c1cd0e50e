//! The address of the page, as another device can open it: what codes and links begin with.

use std::net::{Ipv4Addr, Ipv6Addr};

/// Why a text is no address that another device can open.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum AddressMistake {
    /// It does not begin with `https://` or `http://`.
    Scheme,
    /// Between the slashes there is no name of a computer, or none that can be one.
    Host,
    /// What stands behind the name is no number of a port.
    Port,
    /// A character that no address has.
    Character(char),
    /// It has a number sign: what stands behind it is the page's own to write.
    Fragment,
    /// It leads every device to itself.
    Loopback,
}

impl AddressMistake {
    /// The stable code.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::Scheme => "address-scheme",
            Self::Host => "address-host",
            Self::Port => "address-port",
            Self::Character(_) => "address-character",
            Self::Fragment => "address-fragment",
            Self::Loopback => "address-loopback",
        }
    }
}

/// Why nothing that is printed can lead another device here.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unreachable {
    /// The address that was typed in does not serve.
    Typed(AddressMistake),
    /// None was typed in, and the page was opened from this device itself.
    Page,
}

/// What a code or a link begins with: the address that was typed in, else that of the page.
///
/// * `typed`: what somebody typed in; may be empty.
/// * `page`: where the page was opened, with or without a fragment.
///
/// # Errors
/// [`Unreachable`]. A typed one that does not serve is never passed over for the page's own: whoever typed it means
/// another place.
///
/// ```
/// use brimline::site::address::{Unreachable, outward};
/// assert_eq!(outward("", "https://floors.example/site/#fill"), Ok("https://floors.example/site/"));
/// assert_eq!(outward("http://192.0.2.7:8080/", "file:///page/index.html"), Ok("http://192.0.2.7:8080/"));
/// assert_eq!(outward("", "http://127.0.0.1:8080/"), Err(Unreachable::Page));
/// ```
pub fn outward<'a>(typed: &'a str, page: &'a str) -> Result<&'a str, Unreachable> {
    if typed.trim().is_empty() {
        let whole = page.split('#').next().unwrap_or_default();
        return read(whole).map_err(|_| Unreachable::Page);
    }
    read(typed).map_err(Unreachable::Typed)
}

/// An address without the spaces around it, where another device can open it: `http` or `https`, a host that is not the
/// device itself, no fragment (RFC 3986, section 3).
///
/// # Errors
/// The first [`AddressMistake`].
///
/// ```
/// use brimline::site::address::{AddressMistake, read};
/// assert_eq!(read(" https://floors.example/ "), Ok("https://floors.example/"));
/// assert_eq!(read("floors.example"), Err(AddressMistake::Scheme));
/// ```
pub fn read(text: &str) -> Result<&str, AddressMistake> {
    let text = text.trim();
    let rest = ["https://", "http://"].iter().find_map(|scheme| {
        text.get(..scheme.len())
            .filter(|start| start.eq_ignore_ascii_case(scheme))
            .map(|start| &text[start.len()..])
    });
    let rest = rest.ok_or(AddressMistake::Scheme)?;
    if text.contains('#') {
        return Err(AddressMistake::Fragment);
    }
    if let Some(foreign) = text.chars().find(|one| !is_of_an_address(*one)) {
        return Err(AddressMistake::Character(foreign));
    }
    let authority = rest.split(['/', '?']).next().unwrap_or_default();
    let (host, port) = parted(authority)?;
    let is_port = |port: &str| port.parse::<u16>().is_ok_and(|port| port > 0) && !port.starts_with('+');
    if port.is_some_and(|port| !is_port(port)) {
        return Err(AddressMistake::Port);
    }
    if leads_home(host)? { Err(AddressMistake::Loopback) } else { Ok(text) }
}

/// The characters of RFC 3986, section 2, but the number sign; a name in another script is written in these by every
/// browser's address line.
fn is_of_an_address(one: char) -> bool {
    one.is_ascii_alphanumeric() || "-._~:/?[]@!$&'()*+,;=%".contains(one)
}

/// Host and port. A name and a password before them are no part of what is put on a wall.
fn parted(authority: &str) -> Result<(&str, Option<&str>), AddressMistake> {
    if authority.contains('@') {
        return Err(AddressMistake::Host);
    }
    let end = match authority.find(']') {
        Some(end) => end + 1,
        None if authority.starts_with('[') => return Err(AddressMistake::Host),
        None => authority.find(':').unwrap_or(authority.len()),
    };
    let (host, rest) = authority.split_at(end);
    match rest.strip_prefix(':') {
        Some(port) => Ok((host, Some(port))),
        None if rest.is_empty() => Ok((host, None)),
        None => Err(AddressMistake::Host),
    }
}

/// Whether a host is the device itself, whichever device asks: 127.0.0.0/8 and 0.0.0.0 (RFC 6890, tables 1 and 4), `::1`
/// and `::` (RFC 4291, sections 2.5.2 and 2.5.3), localhost and all names under it (RFC 6761, section 6.3).
fn leads_home(host: &str) -> Result<bool, AddressMistake> {
    let of_four = |four: Ipv4Addr| four.is_loopback() || four.is_unspecified();
    if let Some(six) = host.strip_prefix('[') {
        let six: Ipv6Addr =
            six.strip_suffix(']').and_then(|six| six.parse().ok()).ok_or(AddressMistake::Host)?;
        return Ok(six.is_loopback() || six.is_unspecified() || six.to_ipv4_mapped().is_some_and(of_four));
    }
    let name = host.strip_suffix('.').unwrap_or(host);
    let is_label = |label: &str| {
        !label.is_empty()
            && label.len() <= 63
            && label.chars().all(|one| one.is_ascii_alphanumeric() || matches!(one, '-' | '_'))
    };
    if name.len() > 253 || !name.split('.').all(is_label) {
        return Err(AddressMistake::Host);
    }
    let last = name.rsplit('.').next().unwrap_or_default();
    // Browsers take a host whose last part is a number for an address of four numbers, however it is written; here it
    // is written with all four.
    if last.chars().all(|one| one.is_ascii_digit()) || last.starts_with("0x") || last.starts_with("0X") {
        return name.parse::<Ipv4Addr>().map(of_four).map_err(|_| AddressMistake::Host);
    }
    Ok(last.eq_ignore_ascii_case("localhost"))
}
