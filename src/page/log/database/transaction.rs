//! One transaction: it is done as a whole, or nothing of it is.

use super::{RECORDS, answer, either};
use crate::page::log::Trouble;
use crate::page::log::script::{call, get, window};
use crate::site::log::{Id, Record};
use js_sys::{Array, Uint8Array};
use serde::de::DeserializeOwned;
use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;

/// What a row is found by.
pub type Key = JsValue;

/// The key of a record, or the beginning of it; `own` may be left out.
pub fn key(device: &str, number: u64, own: Option<&str>) -> Key {
    let key = Array::of2(&device.into(), &(number as f64).into());
    if let Some(own) = own {
        key.push(&own.into());
    }
    key.into()
}

/// The keys between two, the first of them included where it is `closed`. A longer key comes after its beginning.
pub fn range(from: &Key, closed: bool, to: &Key) -> Result<JsValue, Trouble> {
    let ranges = get(&window(), "IDBKeyRange")?;
    Ok(call(&ranges, "bound", &[from, to, &(!closed).into(), &true.into()])?)
}

/// The keys after one.
pub fn after(from: &Key) -> Result<JsValue, Trouble> {
    Ok(call(&get(&window(), "IDBKeyRange")?, "lowerBound", &[from, &true.into()])?)
}

/// A transaction. Dropped before it is [`done`](Self::done), it is undone.
pub struct Transaction {
    whole: JsValue,
    ended: Option<JsFuture>,
}

impl Transaction {
    pub(super) fn of(whole: JsValue) -> Result<Self, JsValue> {
        let ended = JsFuture::from(either(&whole, "oncomplete", "onabort")?);
        Ok(Self { whole, ended: Some(ended) })
    }

    /// One of its stores.
    pub fn store(&self, name: &str) -> Result<Store, Trouble> {
        Ok(Store(call(&self.whole, "objectStore", &[&name.into()])?))
    }

    /// Waits for the browser's word that it is done: of one that keeps, that it is on the disk.
    ///
    /// # Errors
    /// Why it was undone.
    pub async fn done(mut self) -> Result<(), Trouble> {
        // It ends by itself once nothing is asked of it any more.
        let ended = match self.ended.take() {
            Some(ended) => ended.await,
            None => Ok(JsValue::UNDEFINED),
        };
        ended.map(drop).map_err(|_| match get(&self.whole, "error") {
            Ok(error) if error.is_object() => Trouble::from(error),
            _ => Trouble::Failed("AbortError".to_owned()),
        })
    }

    /// The records of an id: none, one, or several that say different things.
    pub async fn records(&self, id: &Id) -> Result<Vec<Record>, Trouble> {
        let keys = range(&key(&id.device, id.number, None), true, &key(&id.device, id.number + 1, None))?;
        let lines = self.store(RECORDS)?.all(&keys, None).await?;
        lines.iter().map(|line| read(&line)).collect()
    }
}

impl Drop for Transaction {
    fn drop(&mut self) {
        if self.ended.is_some() {
            let _ = call(&self.whole, "abort", &[]);
        }
    }
}

/// A record out of its line.
pub fn read(line: &JsValue) -> Result<Record, Trouble> {
    let line = line.as_string().ok_or(Trouble::Unreadable)?;
    serde_json::from_str(&line).map_err(|_| Trouble::Unreadable)
}

/// A store of a transaction.
pub struct Store(JsValue);

impl Store {
    /// What stands under a key, or the first in a range; undefined for nothing.
    pub async fn get(&self, key: &Key) -> Result<JsValue, Trouble> {
        Ok(answer(&call(&self.0, "get", &[key])?).await?)
    }

    /// A document out of its JSON; none where there is none, or it does not read.
    pub async fn document<T: DeserializeOwned>(&self, key: &str) -> Result<Option<T>, Trouble> {
        let text = self.get(&key.into()).await?.as_string();
        Ok(text.and_then(|text| serde_json::from_str(&text).ok()))
    }

    /// Puts a value under a key. Why it cannot be kept, the transaction says.
    pub fn put(&self, key: &Key, value: &JsValue) -> Result<(), Trouble> {
        call(&self.0, "put", &[value, key])?;
        Ok(())
    }

    /// Puts a document there as JSON.
    pub fn put_document(&self, key: &Key, value: &impl serde::Serialize) -> Result<(), Trouble> {
        let text = serde_json::to_string(value).map_err(|error| Trouble::Failed(error.to_string()))?;
        self.put(key, &text.into())
    }

    /// Puts bytes there.
    pub fn put_bytes(&self, key: &Key, bytes: &[u8]) -> Result<(), Trouble> {
        self.put(key, &Uint8Array::from(bytes))
    }

    /// Takes away what stands under a key, or in a range.
    pub fn remove(&self, keys: &JsValue) -> Result<(), Trouble> {
        call(&self.0, "delete", &[keys])?;
        Ok(())
    }

    /// Takes everything away.
    pub fn clear(&self) -> Result<(), Trouble> {
        call(&self.0, "clear", &[])?;
        Ok(())
    }

    /// The values in a range, or all of them; so many at most.
    pub async fn all(&self, keys: &JsValue, most: Option<u32>) -> Result<Array, Trouble> {
        self.list("getAll", keys, most).await
    }

    /// The keys in a range, or all of them; so many at most.
    pub async fn keys(&self, keys: &JsValue, most: Option<u32>) -> Result<Array, Trouble> {
        self.list("getAllKeys", keys, most).await
    }

    async fn list(&self, name: &str, keys: &JsValue, most: Option<u32>) -> Result<Array, Trouble> {
        let most = most.map_or(JsValue::UNDEFINED, JsValue::from);
        Ok(answer(&call(&self.0, name, &[keys, &most])?).await?.unchecked_into())
    }
}
