//! Asks the linker for the relocations that the desk tool cuts the page by.

fn main() {
    println!("cargo::rerun-if-changed=src/desk/link.rs");
    if std::env::var("CARGO_CFG_TARGET_ARCH").is_ok_and(|arch| arch == "wasm32")
        && std::env::var_os("CARGO_FEATURE_SPLIT").is_some()
    {
        println!("cargo::rustc-link-arg-bin=brimline=--emit-relocs");
    }
}
