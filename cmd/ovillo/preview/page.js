"use strict";
// The page of the preview. It is told of changes by events, fetches the pages that it does not have, and keeps the reader's place.
(() => {
	const base = document.body.dataset.base;
	const $ = id => document.getElementById(id);
	const files = new Map(); // what was told of each source, by its number
	let shown = 0; // the number of the source that is shown
	let wanted = decodeURIComponent(location.hash.slice(1)); // the name of the one that was chosen
	let tab = "pages";

	// The list of the sources.
	function list() {
		const all = [...files.values()].sort((a, b) => a.place - b.place);
		$("sources").hidden = all.length < 2;
		const ul = $("sources").firstElementChild;
		while (ul.children.length > all.length) ul.lastElementChild.remove();
		all.forEach((f, i) => {
			let li = ul.children[i];
			if (!li) {
				li = document.createElement("li");
				const button = li.appendChild(document.createElement("button"));
				button.type = "button";
				button.append(document.createElement("span"), document.createElement("span"));
				button.addEventListener("click", () => {
					const id = Number(button.dataset.id);
					want(files.get(id));
					choose(id);
				});
				ul.append(li);
			}
			const button = li.firstElementChild;
			button.dataset.id = f.id;
			button.className = f.state;
			button.children[0].textContent = f.name;
			button.children[1].textContent = f.says;
			button.toggleAttribute("aria-current", f.id === shown);
		});
	}

	// want notes which source is meant, in the address too, so that a tab that is opened again comes back to it.
	function want(f) {
		wanted = f.name;
		history.replaceState(null, "", "#" + encodeURIComponent(wanted));
	}

	function choose(id) {
		shown = id;
		for (const id of ["counts", "drawings"]) $(id).replaceChildren();
		$("sheets").replaceChildren();
		list();
		show(true);
		scrollTo(0, 0);
	}

	// What is shown of the source that was chosen. messages says whether they are others than before.
	function show(messages, changed = []) {
		const f = files.get(shown);
		document.title = (f.state === "fine" ? "" : f.says + " · ") + f.short;
		$("name").textContent = f.short;
		$("state").textContent = f.says;
		$("state").className = f.state;
		if (messages) $("messages").innerHTML = f.messages; // escaped where it was made
		$("old").hidden = !f.old;
		$("old").textContent = f.old;
		$("shown").classList.toggle("old", f.old !== "");
		$("none").hidden = f.pages !== undefined || f.state === "reading";
		$("pdf").hidden = !f.pdf;
		if (f.pdf) $("pdf").href = `${base}file/${f.id}/pdf/${encodeURIComponent(f.pdf)}`;
		if (f.pages) {
			lay(f, changed);
			panel(f);
		} else {
			for (const id of ["sheets", "counts", "drawings"]) $(id).replaceChildren();
		}
	}

	// The pages. Each has its place at once, whatever its content takes.
	function lay(f, changed) {
		const sheets = $("sheets");
		while (sheets.children.length > f.pages.length) sheets.lastElementChild.remove();
		f.pages.forEach((p, i) => {
			let sheet = sheets.children[i];
			if (!sheet) {
				sheet = document.createElement("div");
				sheet.className = "sheet";
				sheet.id = "page-" + (i + 1);
				sheet.tabIndex = -1;
				sheet.setAttribute("role", "group");
				sheet.setAttribute("aria-label", document.body.dataset.page + " " + (i + 1));
				sheets.append(sheet);
			}
			sheet.dataset.want = p.name;
			sheet.style.width = p.w + "mm";
			sheet.style.aspectRatio = p.w + " / " + p.h;
		});
		const links = $("changed").firstElementChild;
		$("changed").hidden = changed.length === 0 || tab !== "pages";
		links.replaceChildren(...changed.slice(0, 12).map(i => {
			const a = document.createElement("a");
			a.href = "#page-" + (i + 1);
			a.textContent = i + 1;
			return a;
		}));
		fill(f, new Set(changed));
	}

	let filling = 0;
	const still = matchMedia("(prefers-reduced-motion: reduce)");

	// fill fetches the pages that are others than those in view, those near the reader first and all of these at once.
	async function fill(f, changed) {
		const pass = ++filling;
		const missing = [...$("sheets").children].filter(sheet => sheet.dataset.want !== sheet.dataset.name);
		const near = [], far = [];
		for (const sheet of missing) {
			const box = sheet.getBoundingClientRect();
			(box.bottom > -innerHeight && box.top < 2 * innerHeight ? near : far).push(sheet);
		}
		const take = async sheet => {
			const name = sheet.dataset.want;
			const answer = await fetch(`${base}file/${f.id}/page/${name}`);
			return answer.ok ? [sheet, name, await answer.text()] : null; // it is old already: news will come
		};
		const put = taken => {
			if (!taken || pass !== filling) return;
			const [sheet, name, svg] = taken;
			sheet.innerHTML = svg; // made by the server, with all text escaped
			sheet.dataset.name = name;
			if (changed.has([...sheet.parentNode.children].indexOf(sheet)) && !still.matches) sheet.animate([{ boxShadow: "0 0 0 .25rem #6d93b8" }, {}], 1600);
		};
		try {
			(await Promise.all(near.map(take))).forEach(put);
			while (far.length && pass === filling) (await Promise.all(far.splice(0, 4).map(take))).forEach(put);
		} catch { /* the server is gone, which is said elsewhere */ }
	}

	// panel fetches the counts or the drawings, if they are in view and are not those of this set.
	async function panel(f) {
		const of = `${f.id} ${f.set}`, el = $(tab);
		if (tab === "pages" || el.dataset.of === of && el.hasChildNodes()) return;
		try {
			const answer = await fetch(`${base}file/${f.id}/${tab}`);
			if (answer.ok && f.id === shown) {
				el.innerHTML = await answer.text();
				el.dataset.of = of;
			}
		} catch { /* as above */ }
	}

	// Tabs, as arrow keys and Home and End expect them.
	const tabs = [...document.querySelectorAll("[role=tab]")];
	function turn(to) {
		tab = to.getAttribute("aria-controls");
		for (const t of tabs) {
			t.setAttribute("aria-selected", t === to);
			t.tabIndex = t === to ? 0 : -1;
			$(t.getAttribute("aria-controls")).hidden = t !== to;
		}
		$("changed").hidden = true;
		const f = files.get(shown);
		if (f && f.pages) panel(f);
	}
	tabs.forEach((t, i) => {
		t.addEventListener("click", () => turn(t));
		t.addEventListener("keydown", e => {
			const to = { ArrowRight: i + 1, ArrowLeft: i - 1, Home: 0, End: tabs.length - 1 }[e.key];
			if (to === undefined) return;
			e.preventDefault();
			const next = tabs[(to + tabs.length) % tabs.length];
			turn(next);
			next.focus();
		});
	});

	// Links from page to page.
	document.addEventListener("click", e => {
		const a = e.target.closest("a[href^='#page-']");
		if (!a) return;
		e.preventDefault();
		const sheet = $(a.getAttribute("href").slice(1));
		if (!sheet) return;
		const into = Number(a.dataset.y || 0) / 100 * sheet.offsetHeight;
		scrollTo({ top: scrollY + sheet.getBoundingClientRect().top + into - 64 });
		sheet.focus({ preventScroll: true });
	});

	// What the server tells.
	function told(news) {
		const known = files.get(news.id);
		const f = known && !known.again ? known : {};
		let changed = f.pages && news.pages ? news.pages.flatMap((p, i) => f.pages[i] && f.pages[i].name === p.name ? [] : [i]) : [];
		if (news.pages && changed.length === news.pages.length) changed = []; // no need to say that all did
		const renamed = known && known.name !== news.name;
		files.set(news.id, Object.assign(f, news));
		if (news.id === shown && renamed && wanted) want(f);
		if (!shown || news.id !== shown && f.name === wanted) {
			choose(news.id);
			return;
		}
		list();
		if (news.id === shown) show(news.messages !== undefined, changed);
	}

	let source, retry, silence;
	function listen() {
		clearTimeout(retry);
		if (source) source.close();
		source = new EventSource(base + "events");
		source.addEventListener("open", () => {
			clearTimeout(silence);
			silence = undefined;
			$("lost").hidden = true;
		});
		source.addEventListener("hello", e => {
			const ids = JSON.parse(e.data);
			for (const id of files.keys()) {
				if (!ids.includes(id)) files.delete(id);
			}
			if (!files.has(shown)) shown = 0;
			for (const f of files.values()) f.again = true; // all that there is of it is told anew
			for (const id of ["counts", "drawings"]) delete $(id).dataset.of; // another run counts its sets anew
		});
		source.addEventListener("file", e => told(JSON.parse(e.data)));
		source.addEventListener("end", () => { $("lost").hidden = false; });
		source.addEventListener("error", () => {
			silence ??= setTimeout(() => { $("lost").hidden = false; }, 1500);
			if (source.readyState === EventSource.CLOSED) retry = setTimeout(listen, 1000);
		});
	}
	listen();
	// A tab that nobody has looked at for a while lets go; a browser has few connections to one server.
	let leaving;
	document.addEventListener("visibilitychange", () => {
		clearTimeout(leaving);
		if (document.hidden) leaving = setTimeout(() => { source.close(); source = undefined; }, 60000);
		else if (!source) listen();
	});
})();
