(function () {
  "use strict";
  var doc = document, root = doc.documentElement, key = root.dataset.key, tags = root.dataset.langs.split(" ");
  var kept = {};
  try { kept = JSON.parse(localStorage.getItem(key)) || {}; } catch (e) { kept = {}; }
  if (typeof kept !== "object" || Array.isArray(kept)) kept = {};
  if (typeof kept.ticks !== "object" || !kept.ticks) kept.ticks = {};
  function keep() { try { localStorage.setItem(key, JSON.stringify(kept)); } catch (e) { /* it is remembered until the page is closed */ } }

  function asked() {
    var i = tags.indexOf(kept.lang);
    if (i >= 0) return i;
    var wanted = navigator.languages || [];
    for (var k = 0; k < wanted.length; k++)
      for (i = 0; i < tags.length; i++)
        if (tags[i].split("-")[0] === wanted[k].split("-")[0]) return i;
    return 0;
  }
  var at = asked(), view = "va";
  function showLanguage() { root.dataset.at = at; root.lang = tags[at]; }
  root.classList.add("js");
  root.dataset.view = view;
  showLanguage();

  doc.addEventListener("DOMContentLoaded", function () {
    var all = function (sel, from) { return Array.prototype.slice.call((from || doc).querySelectorAll(sel)); };
    var articles = all("article"), bars = all(".tools"), cleared = null;
    doc.querySelector(".bar").hidden = false;
    all(".keeper").forEach(function (k) { k.hidden = false; });

    // The size by its name, which stays when sizes are added.
    var sizes = {};
    all("select", bars[0]).forEach(function (s) {
      all("option", s).forEach(function (o) { sizes[o.value] = o.dataset.size || ""; });
    });
    Object.keys(sizes).forEach(function (v) { if (kept.size && sizes[v] === kept.size) view = v; });

    function ticks() {
      var name = root.dataset.edition + "/" + (sizes[view] || "");
      if (typeof kept.ticks[name] !== "object" || !kept.ticks[name]) kept.ticks[name] = {};
      return kept.ticks[name];
    }
    function setTicks(t) { kept.ticks[root.dataset.edition + "/" + (sizes[view] || "")] = t; }
    function times(row) { return Number(row.dataset.n || 1); }
    function done(row) { return Math.min(Math.max(Number(ticks()[row.dataset.k]) || 0, 0), times(row)); }
    function set(row, n) {
      if (n > 0) ticks()[row.dataset.k] = n; else delete ticks()[row.dataset.k];
      cleared = null;
      keep();
      show();
    }
    function fill(text, values) { return text.replace(/\{\}/g, function () { return values.shift(); }); }
    function name(row) {
      var label = row.querySelector(".label");
      var text = label ? label.textContent.trim() : "";
      if (!text) { var body = row.querySelector(".do"); text = body ? body.textContent.trim() : ""; }
      return text;
    }
    function chapter(row) { var h = row.closest("section").querySelectorAll("h2"), i;
      for (i = 0; i < h.length; i++) if (h[i].offsetParent !== null) return h[i].textContent.trim();
      return ""; }
    function rows() { return all("li.row[data-k]", articles[at]).filter(function (r) { return r.offsetParent !== null; }); }

    all("li.row[data-n]").forEach(function (row) {
      var article = row.closest("article"), box = doc.createElement("div"), what = name(row);
      box.className = "counter";
      function button(sign, says, by) {
        var b = doc.createElement("button");
        b.type = "button"; b.textContent = sign; b.setAttribute("aria-label", fill(says, [what]));
        b.addEventListener("click", function () { set(row, Math.min(Math.max(done(row) + by, 0), times(row))); });
        return b;
      }
      var n = doc.createElement("span");
      box.append(button("\u2212", article.dataset.down, -1), n, button("+", article.dataset.up, 1));
      row.querySelector(".head").append(box);
    });

    var here = null, order = [];
    function show() {
      order = rows();
      here = null;
      var count = 0, total = 0;
      order.forEach(function (row) {
        var n = done(row), of = times(row), past = n >= of;
        count += n; total += of;
        row.querySelector("input").checked = past;
        row.classList.toggle("past", past);
        var c = row.querySelector(".counter span");
        if (c) c.textContent = n + " / " + of;
        if (!past && !here) here = row;
        row.classList.remove("now");
        row.removeAttribute("aria-current");
      });
      if (here) { here.classList.add("now"); here.setAttribute("aria-current", "step"); }
      var article = articles[at], k = article.querySelector(".keeper");
      var link = k.querySelector(".here"), text = article.dataset.all;
      if (here) text = name(here) + (times(here) > 1 ? " (" + (done(here) + 1) + " / " + times(here) + ")" : "") + " \u00b7 " + chapter(here);
      if (link.textContent !== text) link.textContent = text;
      k.querySelector(".done").textContent = fill(article.dataset.done, [count, total]);
      k.querySelector(".next").disabled = !here;
      k.querySelector(".back").disabled = count === 0;
      bars.forEach(function (bar) {
        var b = bar.querySelector(".clear");
        if (!b.dataset.usual) b.dataset.usual = b.textContent;
        b.textContent = cleared ? b.dataset.other : b.dataset.usual;
      });
    }
    function reach(row) { if (row) row.scrollIntoView({ block: "center" }); }

    function choose(to) {
      root.dataset.view = view = to;
      all("select").forEach(function (s) { s.value = to; });
      cleared = null;
      show();
    }
    all("select").forEach(function (s) {
      s.addEventListener("change", function () { kept.size = sizes[s.value]; choose(s.value); keep(); });
    });
    all("[data-lang]").forEach(function (b) {
      b.addEventListener("click", function () { at = Number(b.dataset.lang); kept.lang = tags[at]; keep(); speak(); show(); });
    });
    function speak() {
      showLanguage();
      all("[data-lang]").forEach(function (b) { b.setAttribute("aria-pressed", String(Number(b.dataset.lang) === at)); });
    }
    doc.addEventListener("change", function (e) {
      var row = e.target.closest("li.row[data-k]");
      if (row && e.target.type === "checkbox") set(row, e.target.checked ? times(row) : 0);
    });
    all(".next").forEach(function (b) {
      b.addEventListener("click", function () { if (here) { set(here, done(here) + 1); reach(here); } });
    });
    all(".back").forEach(function (b) {
      b.addEventListener("click", function () {
        for (var i = order.length - 1; i >= 0; i--)
          if (done(order[i]) > 0) { var row = order[i]; set(row, done(row) - 1); reach(row); return; }
      });
    });
    all(".here").forEach(function (a) {
      a.addEventListener("click", function (e) { e.preventDefault(); reach(here); });
    });
    bars.forEach(function (bar) {
      bar.querySelector(".clear").addEventListener("click", function () {
        var before = cleared;
        if (before) { setTicks(before); before = null; } else { before = ticks(); setTicks({}); }
        cleared = before;
        keep();
        show();
      });
    });
    speak();
    choose(view);
  });
})();
