'use strict';

// The page's exchange with its server: pieces of HTML come back and take the place of those of the
// same id. All figures are computed there; here is only what follows the hand.

const POLL_MS = 2000;
const SAID_MS = 5000;
const said = document.getElementById('said');
let units = sessionStorage.getItem('units') || '';
let queue = Promise.resolve();
let trial = null;
let trying = false;
let latest = 0;

const byId = id => document.getElementById(id);
const width = () => Math.round(byId('drawing')?.clientWidth || 360);
const bar = () => byId('bar');
const wrong = () => document.querySelector('#notices li')?.textContent || '';
const items = () => [...document.querySelectorAll('#fields details[id^="at-"]')];

function fields(more) {
  const all = new URLSearchParams(more);
  all.set('units', units);
  all.set('width', width());
  return all;
}

// What was done is said for a while; what is wrong stays until something else is done.
function say(text, passing) {
  said.textContent = text;
  said.toggleAttribute('data-passing', Boolean(passing));
  if (passing) {
    setTimeout(() => {
      if (said.textContent === text) said.replaceChildren();
    }, SAID_MS);
  }
}

async function ask(path, more, post) {
  try {
    const answer = post
        ? await fetch(path, {method: 'POST', body: fields(more)})
        : await fetch(path + '?' + fields(more));
    if (answer.ok) return await answer.text();
    say(await answer.text());
  } catch (gone) {
    say('Not done: the page has been ended in its terminal. Started again it offers what was changed until then.');
  }
  return '';
}

// Where the hands are, so that they are there again when a piece has been replaced.
function place() {
  const at = document.activeElement;
  if (!at || at === document.body) return () => {};
  const keys = ['data-do', 'data-at', 'data-step', 'name'];
  const own = keys.filter(k => at.hasAttribute(k))
      .map(k => `[${k}="${CSS.escape(at.getAttribute(k))}"]`).join('');
  const [holder, parent] = [at.closest('[data-at]'), at.closest('[id]')];
  const within = holder && holder !== at && (!parent || parent.contains(holder))
      ? `[data-at="${CSS.escape(holder.dataset.at)}"] `
      : parent ? `#${CSS.escape(parent.id)} ` : '';
  const find = () => at.id ? byId(at.id) : document.querySelector(within + at.localName + own);
  const caret = at.matches('input:not([type=range])') ? at.selectionStart : null;
  return () => {
    if (document.contains(at)) return;
    find()?.focus({preventScroll: true});
    if (caret !== null) document.activeElement.setSelectionRange?.(caret, caret);
  };
}

// What is typed or chosen and not sent yet stays when its piece is replaced.
function keep(piece) {
  for (const was of byId(piece.id)?.querySelectorAll('input[id], select[id]') || []) {
    const now = piece.querySelector('#' + CSS.escape(was.id));
    const busy = was === document.activeElement || !was.dataset.at;
    const typed = was.localName === 'select' || was.value !== was.defaultValue;
    if (!now || !busy || !typed || was.type === 'range') continue;
    const before = now.value;
    now.value = was.value;
    if (now.localName === 'select' && now.selectedIndex < 0) now.value = before;
  }
}

// What the hands are at stays at its height, whatever grows or goes above it.
function show(html) {
  if (!html) return;
  const height = () => document.activeElement.getBoundingClientRect().top;
  const before = height();
  const back = place();
  const open = new Set([...document.querySelectorAll('details[open]')].map(d => d.id));
  const pieces = document.createElement('template');
  pieces.innerHTML = html;
  for (const piece of [...pieces.content.children]) {
    if (piece.id === 'said') {
      said.replaceChildren(...piece.childNodes);
      said.removeAttribute('data-passing');
      continue;
    }
    piece.querySelectorAll('details').forEach(d => {
      if (open.has(d.id)) d.open = true;
    });
    const same = !piece.querySelector('input') && byId(piece.id)?.isEqualNode(piece);
    if (!same) {
      keep(piece);
      byId(piece.id)?.replaceWith(piece);
    }
  }
  back();
  showSheets();
  if (document.activeElement !== document.body) scrollBy(0, height() - before);
}

// An answer stands as it was given: above it is said that the job has changed since.
function outdate() {
  for (const answer of document.querySelectorAll('.answer:not(:empty)')) {
    if (answer.querySelector('.since, [data-working]')) continue;
    const since = document.createElement('p');
    since.className = 'since row';
    since.setAttribute('role', 'status');
    const again = document.createElement('button');
    again.type = 'button';
    again.textContent = 'Ask again';
    again.addEventListener('click', () =>
        document.querySelector(`[data-panel="${answer.id.slice(7)}"]`).requestSubmit());
    since.append('This answer is from before the last change. ', again);
    answer.prepend(since);
  }
}

function act(more, form) {
  latest++;
  trial = null;
  queue = queue.then(async () => {
    said.replaceChildren();
    const wrongBefore = wrong();
    const known = new Set(items().map(it => it.id));
    const html = await ask('do', {...more, seen: bar().dataset.number}, true);
    const done = html && !html.includes('<div id="said"');
    if (done) form?.reset();
    show(html);
    if (done) outdate();
    const did = byId('changed')?.dataset.did;
    if (!said.textContent && did) say(did, true);
    if (!said.textContent && wrong() !== wrongBefore) say(wrong());
    const made = more.do.startsWith('add-') ? items().filter(it => !known.has(it.id)) : [];
    const named = made.find(it => it.querySelector('b').textContent === more.name) || made[0];
    if (named) reveal(named.id);
  });
  return queue;
}

// Of what is dragged only the last place counts: one question at a time is on its way.
async function follow() {
  if (trying) return;
  trying = true;
  while (trial) {
    const asked = trial;
    const number = latest;
    trial = null;
    const html = await ask('try', asked, true);
    if (number === latest) show(html);
  }
  trying = false;
}

function drag(range, kept) {
  const holder = range.closest('.drag');
  const value = range.dataset.choices.split('\t')[range.value];
  holder.querySelector('output').textContent = value;
  range.setAttribute('aria-valuetext', value);
  const change = {at: holder.dataset.at, value};
  if (kept) {
    act({do: 'set', ...change});
  } else {
    trial = change;
    follow();
  }
}

// How a value of what was read is written.
function hint() {
  const example = byId('reading-what').selectedOptions[0]?.dataset.example;
  byId('reading-value').placeholder = example || '';
}

function reveal(id) {
  const target = byId(id + '-value') || byId(id);
  if (!target) return;
  for (let up = target; up; up = up.parentElement) {
    if (up.localName === 'details') up.open = true;
  }
  const focus = target.localName === 'details' ? target.querySelector('summary') : target;
  focus.focus();
  focus.scrollIntoView({block: 'center'});
}

document.addEventListener('input', event => {
  if (event.target.matches('.drag input')) drag(event.target, false);
});

document.addEventListener('change', event => {
  const at = event.target;
  if (at.matches('.drag input')) drag(at, true);
  if (at.matches('[data-answer]')) {
    queue = queue.then(async () => show(await ask('draw', answers(), true)));
  }
  if (at.matches('[data-sheets]')) {
    const from = [...at.form.elements.from.options];
    from.find(it => it.value === 'files dropped here').selected = true;
    take(at.files);
  }
  if (at.id === 'reading-what') hint();
  if (at.matches('input[data-at]')) act({do: 'set', at: at.dataset.at, value: at.value});
});

// Data sheets that were dropped onto the page or chosen: they stay here until a pump is taken.
const sheets = new Map();
async function take(files) {
  for (const file of files) {
    if (file.name.toLowerCase().endsWith('.csv') && file.size < 200000) {
      sheets.set(file.name.slice(0, -4), await file.text());
    } else {
      say(file.name + ' is not taken: a data sheet is a small file that ends in .csv');
    }
  }
  showSheets();
}
function showSheets() {
  const names = [...sheets.keys()];
  for (const place of document.querySelectorAll('.dropped')) {
    if (names.join() === [...place.children].map(it => it.dataset.drop).join()) continue;
    place.replaceChildren(...names.map(name => {
      const button = document.createElement('button');
      button.type = 'button';
      button.dataset.drop = name;
      button.textContent = name + ' \u00d7';
      button.setAttribute('aria-label', 'leave out ' + name);
      return button;
    }));
  }
}
const sheetFields = () =>
    Object.fromEntries([...sheets].map(([name, text]) => ['sheet:' + name, text]));

document.addEventListener('dragover', event => event.preventDefault());
document.addEventListener('drop', event => {
  event.preventDefault();
  take(event.dataTransfer.files);
  reveal('study-pumps');
});

// A panel that takes long answers with how far it has come, and is asked again.
async function study(name, html) {
  show(html);
  while (document.querySelector(`[data-working="${name}"]`)) {
    await new Promise(later => setTimeout(later, 300));
    const more = await ask('work', {panel: name});
    if (!more) return;
    show(more);
  }
}

// A new job: every answer draws it anew; at the end the page of the job takes its place.
const start = () => document.querySelector('[data-start=begin]');
const answers = () => Object.fromEntries(new FormData(start()));

document.addEventListener('submit', event => {
  const form = event.target;
  if (form.dataset.start) {
    event.preventDefault();
    said.replaceChildren();
    queue = queue.then(async () => {
      const chosen = Object.fromEntries(new FormData(form));
      const html = await ask('begin', {...answers(), ...chosen}, true);
      if (html.includes('id="begun"')) {
        history.scrollRestoration = 'manual';
        location.reload();
      } else {
        show(html);
      }
      document.querySelector('[aria-invalid]')?.focus();
    });
    return;
  }
  if (form.dataset.panel) {
    event.preventDefault();
    const name = form.dataset.panel;
    const dropped = form.querySelector('[data-sheets]') ? sheetFields() : {};
    ask('ask', {...Object.fromEntries(new FormData(form)), ...dropped, panel: name}, true)
        .then(html => study(name, html));
    return;
  }
  if (!form.dataset.do) return;
  event.preventDefault();
  const filled = Object.fromEntries(new FormData(form));
  act({do: form.dataset.do, at: form.dataset.at || '', ...filled}, form);
});

document.addEventListener('click', event => {
  if (event.target === said) said.replaceChildren();
  const link = event.target.closest('a[href^="#at-"]');
  if (link) {
    event.preventDefault();
    reveal(link.getAttribute('href').slice(1));
    return;
  }
  const button = event.target.closest('button');
  if (!button) return;
  if (button.dataset.units) {
    units = button.dataset.units;
    sessionStorage.setItem('units', units);
    ask('pieces', {}).then(show);
  } else if (button.dataset.step) {
    const range = button.closest('.drag').querySelector('input');
    const before = range.value;
    range.value = Number(range.value) + Number(button.dataset.step);
    if (range.value !== before) drag(range, true);
  } else if (button.dataset.reading) {
    byId('reading-what').value = button.dataset.reading;
    hint();
    reveal('reading');
  } else if (button.dataset.drop) {
    sheets.delete(button.dataset.drop);
    showSheets();
  } else if (button.dataset.stop) {
    ask('stop', {panel: button.dataset.stop}, true);
  } else if (button.dataset.do) {
    const {do: what, at = '', value = ''} = button.dataset;
    const dropped = what === 'take-sheet' ? {['sheet:' + value]: sheets.get(value) || ''} : {};
    act({do: what, at, value, ...dropped});
  }
});

document.addEventListener('keydown', event => {
  if (!(event.ctrlKey || event.metaKey)) return;
  const typing = event.target.matches('input:not([type=range])');
  const key = event.key.toLowerCase();
  if (key === 's') {
    event.preventDefault();
    if (!byId('do-save').disabled) byId('do-save').click();
  } else if (!typing && (key === 'z' || key === 'y')) {
    event.preventDefault();
    act({do: key === 'y' || event.shiftKey ? 'redo' : 'undo'});
  }
});

// Another page, or another program, may have changed the job meanwhile.
setInterval(async () => {
  const typing = document.activeElement?.matches('input:not([type=range])');
  if (document.hidden || trying || typing || start()) return;
  const number = latest;
  const html = await ask('state', {seen: bar().dataset.state});
  if (number === latest) show(html);
}, POLL_MS);

let resized = 0;
function fit() {
  clearTimeout(resized);
  resized = setTimeout(async () => {
    show(start() ? await ask('draw', answers(), true) : await ask('pieces', {}));
    document.body.dataset.fitted = width();
  }, 100);
}
let fitted = 0;
new ResizeObserver(() => {
  if (Math.abs(width() - fitted) > 8) {
    fitted = width();
    fit();
  }
}).observe(byId('page'));
