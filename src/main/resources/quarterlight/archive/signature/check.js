"use strict";
(() => {
  const $ = (id) => document.getElementById(id);
  const SLICE = 8 << 20, WHOLE = 64 << 20, SHOWN = 60;
  const KEY = "signature/inspector-key.pem", SIGNATURE = "signature/tagmanifest-sha256.txt.sig";
  const MANIFEST = "manifest-sha256.txt", TAGS = "tagmanifest-sha256.txt";
  const SYSTEM = /(^|\/)(\.DS_Store|Thumbs\.db|desktop\.ini|\._[^/]*)$/;
  const PICTURE = /^data\/(originals|pictures)\/.*\.(jpe?g|png|webp|gif|avif)$/i;
  let round = 0, print = "", urls = [];

  const hex = (bytes) => Array.from(new Uint8Array(bytes), (b) => b.toString(16).padStart(2, "0")).join("");
  const grouped = (text) => text.replace(/(.{4})(?=.)/g, "$1 ");
  const count = (n, one, many) => n + " " + (n === 1 ? one : many);

  async function digest(bytes) {
    if (globalThis.crypto && crypto.subtle) {
      try { return hex(await crypto.subtle.digest("SHA-256", bytes)); } catch (e) { /* the script does it */ }
    }
    return sha256(new Uint8Array(bytes));
  }

  /** A file of any length, in slices: no more than one of them lies in memory. */
  async function digestOf(file) {
    if (file.size <= WHOLE) return digest(await file.arrayBuffer());
    const sum = sha256.create();
    for (let at = 0; at < file.size; at += SLICE) {
      sum.update(new Uint8Array(await file.slice(at, at + SLICE).arrayBuffer()));
    }
    return sum.hex();
  }

  async function verified(raw, bytes, signature) {
    if (globalThis.crypto && crypto.subtle) {
      try {
        const key = await crypto.subtle.importKey("raw", raw, { name: "Ed25519" }, false, ["verify"]);
        return { good: await crypto.subtle.verify({ name: "Ed25519" }, key, signature, bytes), by: "the browser" };
      } catch (e) { /* a browser without Ed25519: the script does it */ }
    }
    const good = signature.length === 64 && nacl.sign.detached.verify(bytes, signature, raw);
    return { good, by: "the script of this page" };
  }

  function manifest(text) {
    const listed = new Map();
    for (const line of text.split(/\r\n|\r|\n/)) {
      const m = /^([0-9a-fA-F]{64})[ \t]+(.+)$/.exec(line);
      if (m) listed.set(m[2].replace(/%0A/gi, "\n").replace(/%0D/gi, "\r").replace(/%25/g, "%"), m[1].toLowerCase());
    }
    return listed;
  }

  function labels(text) {
    const found = new Map();
    for (const line of text.split(/\r\n|\r|\n/)) {
      const colon = line.indexOf(":");
      if (colon > 0) found.set(line.slice(0, colon).trim(), line.slice(colon + 1).trim());
    }
    return found;
  }

  /** The folder that holds bagit.txt, wherever it lies in what was chosen. */
  function bag(files) {
    const declared = files.filter((f) => /(^|\/)bagit\.txt$/.test(f.path)).sort((a, b) => a.path.length - b.path.length)[0];
    if (!declared) return null;
    const base = declared.path.slice(0, -"bagit.txt".length);
    const inside = new Map();
    for (const f of files) if (f.path.startsWith(base)) inside.set(f.path.slice(base.length), f.file);
    return inside;
  }

  async function signature(inside, info) {
    const named = info.get("Quarterlight-Key");
    if (!inside.has(KEY) && !inside.has(SIGNATURE) && !named) return { state: "unsigned", why: "" };
    for (const part of [KEY, SIGNATURE, TAGS]) {
      if (!inside.has(part)) return { state: "bad", why: part + " is missing" };
    }
    const pem = /-----BEGIN PUBLIC KEY-----([A-Za-z0-9+/=\s]*)-----END PUBLIC KEY-----/.exec(await inside.get(KEY).text());
    let der = new Uint8Array(0);
    try { der = Uint8Array.from(atob(pem[1].replace(/\s/g, "")), (c) => c.charCodeAt(0)); } catch (e) { /* told below */ }
    if (der.length !== 44 || hex(der.slice(0, 12)) !== "302a300506032b6570032100") {
      return { state: "bad", why: "its public key cannot be read" };
    }
    const finger = await digest(der.buffer);
    if (finger !== named) return { state: "bad", why: "the key in it is not the one that it names", finger };
    const bytes = new Uint8Array(await inside.get(TAGS).arrayBuffer());
    const sig = new Uint8Array(await inside.get(SIGNATURE).arrayBuffer());
    const told = await verified(der.slice(12), bytes, sig);
    return told.good
      ? { state: "good", why: "", finger, by: told.by }
      : { state: "bad", why: "it was not made of this list of files by this key", finger };
  }

  async function check(files) {
    const mine = ++round;
    const inside = bag(files);
    $("result").hidden = $("shown").hidden = true;
    urls.forEach((url) => URL.revokeObjectURL(url));
    urls = [];
    if (!inside || !inside.has(MANIFEST)) {
      say("This folder is no archive of a visit: it holds no " + (inside ? MANIFEST : "bagit.txt") + ". Unpack the zip file, and choose the folder that came out of it.");
      return;
    }
    const info = labels(inside.has("bag-info.txt") ? await inside.get("bag-info.txt").text() : "");
    const listed = manifest(await inside.get(MANIFEST).text());
    const tags = manifest(inside.has(TAGS) ? await inside.get(TAGS).text() : "");
    const signed = await signature(inside, info);
    const problems = [], remarks = [], all = [...tags, ...listed], found = new Map();
    if (listed.size === 0) problems.push(MANIFEST + " lists no file");
    if (signed.state !== "unsigned" && !tags.has(MANIFEST)) problems.push(TAGS + " does not cover " + MANIFEST);
    $("progress").hidden = false;
    $("progress").max = all.length;
    let done = 0;
    for (const [path, hash] of all) {
      $("progress").value = done++;
      if (done % 10 === 1) say("Checking file " + done + " of " + all.length);
      const file = inside.get(path) || inside.get(path.normalize("NFC")) || inside.get(path.normalize("NFD"));
      if (!file) { problems.push(path + " is missing"); continue; }
      let got = "";
      try { got = await digestOf(file); } catch (e) { /* a file that cannot be read does not agree */ }
      if (mine !== round) return;
      found.set(path, { file, hash, good: got === hash });
      if (got !== hash) problems.push(path + " is not what was archived");
    }
    const known = new Set([...tags.keys(), ...listed.keys(), TAGS, SIGNATURE].map((p) => p.normalize("NFC")));
    for (const path of inside.keys()) {
      if (known.has(path.normalize("NFC"))) continue;
      if (SYSTEM.test(path)) remarks.push(path + " was added, as systems do when a folder is opened; it is not part of the archive");
      else if (path.startsWith("data/") || signed.state !== "unsigned") problems.push(path + " was added later");
    }
    $("progress").hidden = true;
    say("");
    tell(info, signed, listed, problems, remarks);
    show(found);
  }

  function say(text) { $("progresstext").textContent = text; }

  /** A time as ISO 8601 has it, as people read it; what is none stays as it is. */
  function moment(text) {
    const t = /^(\d{4})-(\d\d)-(\d\d)T(\d\d:\d\d)(?::\d\d(?:\.\d+)?)?(Z|[+-]\d\d:\d\d)$/.exec(text);
    const month = t && "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec".split(" ")[t[2] - 1];
    return month ? month + " " + Number(t[3]) + ", " + t[1] + ", " + t[4] + " (UTC" + (t[5] === "Z" ? "+00:00" : t[5]) + ")" : text;
  }

  function tell(info, signed, listed, problems, remarks) {
    const whole = problems.length === 0;
    const state = signed.state === "bad" || !whole ? "bad" : signed.state;
    const parts = [];
    parts.push(whole ? "All " + count(listed.size, "file agrees with its hash.", "files agree with their hashes.")
      : count(problems.length, "thing does not hold", "things do not hold") + "; do not rely on this copy.");
    parts.push(signed.state === "good" ? "The signature is good."
      : signed.state === "bad" ? "The signature is bad: " + signed.why + "."
        : "The archive is not signed: hashes show damage, and not who made it.");
    $("verdict").textContent = parts.join(" ");
    $("verdict").dataset.state = state;
    list("problems", problems, remarks);
    const facts = [["Archive of", info.get("External-Description")], ["Holds", info.get("Quarterlight-Contents")],
      ["Signed by", info.get("Quarterlight-Signed-By")], ["Signed at", info.get("Quarterlight-Signed-At") && moment(info.get("Quarterlight-Signed-At")) + "; the signer's word"],
      ["Made with", info.get("Quarterlight-Version")], ["Models", info.get("Quarterlight-Models")],
      ["End of the edit log", info.get("Quarterlight-Log-Head")], ["Key", signed.finger && grouped(signed.finger)], ["Signature checked by", signed.by]];
    $("facts").replaceChildren(...facts.filter((f) => f[1]).flatMap(([name, value]) => {
      const dt = document.createElement("dt"), dd = document.createElement("dd");
      dt.textContent = name;
      dd.textContent = value;
      return [dt, dd];
    }));
    print = signed.finger || "";
    $("compare").hidden = !print;
    same();
    $("result").hidden = false;
  }

  function list(id, problems, remarks) {
    $(id).replaceChildren(...[...problems.map((text) => [text, "wrong"]), ...remarks.map((text) => [text, "second"])].map(([text, kind]) => {
      const li = document.createElement("li");
      li.textContent = text + ".";
      li.className = kind;
      return li;
    }));
  }

  function same() {
    const typed = $("wanted").value.replace(/[\s:.-]/g, "").toLowerCase();
    $("same").className = typed && typed !== print ? "wrong" : "";
    $("same").textContent = !typed ? "" : typed === print ? "It is the key that you were told of."
      : "It is another key than you were told of. Ask the inspector before you rely on this archive.";
  }

  function address(file, type) {
    const url = URL.createObjectURL(type ? new Blob([file], { type }) : file);
    urls.push(url);
    return url;
  }

  function show(found) {
    const pages = [...found].filter(([path]) => /^data\/pages\/[^/]+\.(html|pdf|svg)$/.test(path));
    $("pages").replaceChildren(...pages.flatMap(([path, f]) => {
      const a = document.createElement("a");
      a.textContent = path.slice("data/pages/".length) + (f.good ? "" : " (changed)");
      a.target = "_blank";
      a.href = address(f.file);
      a.style.color = "var(--accent)";
      return [a, document.createTextNode("   ")];
    }));
    const pictures = [...found].filter(([path]) => PICTURE.test(path));
    const other = [...found].filter(([path]) => /^data\/originals\//.test(path)).length - pictures.filter(([path]) => path.startsWith("data/originals/")).length;
    $("counted").textContent = count(pictures.length, "picture", "pictures")
      + (other > 0 ? "; " + count(other, "original of a kind", "originals of kinds") + " that browsers do not show lies in data/originals" : "") + ".";
    $("pictures").replaceChildren();
    let at = 0;
    const more = () => {
      for (const [path, f] of pictures.slice(at, at + SHOWN)) $("pictures").append(tile(path, f));
      at = Math.min(at + SHOWN, pictures.length);
      $("more").hidden = at >= pictures.length;
    };
    $("more").onclick = more;
    more();
    $("shown").hidden = pages.length + pictures.length === 0;
  }

  function tile(path, f) {
    const li = document.createElement("li"), button = document.createElement("button"), img = document.createElement("img"), span = document.createElement("span");
    const name = path.split("/").pop();
    const words = name + " · " + f.hash.slice(0, 8) + (f.good ? "" : " · changed since it was archived");
    button.type = "button";
    img.alt = "";
    img.loading = "lazy";
    img.decoding = "async";
    img.src = address(f.file);
    span.textContent = words;
    if (!f.good) span.className = "wrong";
    button.append(img, span);
    button.onclick = () => {
      const large = $("large");
      large.querySelector("img").src = img.src;
      large.querySelector("img").alt = name;
      large.querySelector("p").textContent = words + " · SHA-256 as archived: " + f.hash;
      large.showModal();
    };
    li.append(button);
    return li;
  }

  async function entries(entry, at, files) {
    if (entry.isFile) {
      files.push({ path: at + entry.name, file: await new Promise((ok, no) => entry.file(ok, no)) });
    } else if (entry.isDirectory) {
      const reader = entry.createReader();
      for (;;) {
        const some = await new Promise((ok, no) => reader.readEntries(ok, no));
        if (some.length === 0) break;
        for (const one of some) await entries(one, at + entry.name + "/", files);
      }
    }
  }

  async function zip(file) {
    $("zipped").hidden = false;
    $("zipname").textContent = file.name;
    $("ziphash").textContent = "working it out";
    $("ziphash").textContent = grouped(await digestOf(file));
  }

  $("folder").addEventListener("change", () => check([...$("folder").files].map((file) => ({ path: file.webkitRelativePath || file.name, file }))));
  $("zip").addEventListener("change", () => { if ($("zip").files[0]) zip($("zip").files[0]); });
  $("wanted").addEventListener("input", same);
  const place = document.body;
  place.addEventListener("dragover", (e) => { e.preventDefault(); $("place").classList.add("over"); });
  place.addEventListener("dragleave", () => $("place").classList.remove("over"));
  place.addEventListener("drop", async (e) => {
    e.preventDefault();
    $("place").classList.remove("over");
    const dropped = [...e.dataTransfer.items].map((item) => item.webkitGetAsEntry()).filter(Boolean), files = [];
    if (dropped.length === 1 && dropped[0].isFile && /\.zip$/i.test(dropped[0].name)) {
      zip(e.dataTransfer.files[0]);
      return;
    }
    for (const one of dropped) await entries(one, "", files);
    check(files);
  });
})();
