'use strict';
// Measuring on a picture: one named point after another, numbers at once, a blind second placing, and into the case.
(() => {
  const root = document.getElementById('measure');
  if (!root) return;
  const $ = s => root.querySelector(s);
  const base = root.dataset.base;
  let version = root.dataset.version;
  const state = { kind: 'arch-picture', guide: null, points: new Map(), again: new Map(), second: false, now: null, undone: [], file: null, covers: [], result: null };
  const el = (tag, props, ...kids) => { const e = Object.assign(document.createElement(tag), props || {}); e.append(...kids); return e; };
  const said = (text, bad) => { const s = $('#measure-said'); s.textContent = text; s.classList.toggle('unread', !!bad); s.hidden = !text; };

  const view = new MeasureView($('#measure-canvas'), $('#measure-loupe'), {
    place: p => place(p),
    moving: () => {},
    moved: (q, p) => { remember(); at().set(q.name, { x: p.x, y: p.y }); changed(); },
    cover: r => { state.covers.push(r); view.covers = state.covers; view.covering = false; coverText(); },
    key: e => {
      if (e.key === 'Backspace' || e.key === 'z' && (e.ctrlKey || e.metaKey)) { e.preventDefault(); undo(); }
      else if (e.key === 'n') next(1); else if (e.key === 'p') next(-1); else if (e.key === 'Delete') { e.preventDefault(); forget(); }
    }
  });

  // ---- points ----

  const at = () => state.second ? state.again : state.points;
  const scaleNames = () => {
    const how = $('#scale-how').value;
    return how === 'length' ? [['R1', 'Known length, one end'], ['R2', 'Known length, other end']]
      : how === 'frame' ? [['K1', 'Frame, upper left corner'], ['K2', 'Frame, upper right corner'], ['K3', 'Frame, lower right corner'], ['K4', 'Frame, lower left corner']] : [];
  };
  const asked = () => state.second
    ? state.guide.points.filter(p => state.guide.twice.includes(p.name) && state.points.has(p.name))
    : [...scaleNames().map(([name, title]) => ({ name, title, where: 'As exactly as the picture shows it; zoom in.', source: '', needed: true })), ...state.guide.points];

  function place(p) {
    if (!state.now) return;
    remember();
    at().set(state.now, p);
    const all = asked(), i = all.findIndex(q => q.name === state.now);
    const later = [...all.slice(i + 1), ...all.slice(0, i)].find(q => q.needed && !at().has(q.name));
    state.now = later ? later.name : state.now;
    changed();
  }

  function remember() { state.undone.push([new Map(state.points), new Map(state.again), state.now]); if (state.undone.length > 200) state.undone.shift(); }
  function undo() { const old = state.undone.pop(); if (old) { [state.points, state.again, state.now] = old; changed(); } }
  function forget() { if (state.now && at().has(state.now)) { remember(); at().delete(state.now); changed(); } }
  function next(by) { const all = asked(), i = all.findIndex(q => q.name === state.now); state.now = all[(i + by + all.length) % all.length].name; list(); }

  function changed() { list(); numbers(); }

  function list() {
    const all = asked();
    if (!all.some(q => q.name === state.now)) state.now = (all.find(q => q.needed && !at().has(q.name)) || all[0]).name;
    const ul = $('#measure-points'), focused = ul.contains(document.activeElement);
    ul.replaceChildren(...all.map(q => el('li', {}, el('button', {
      type: 'button', className: 'quiet point' + (at().has(q.name) ? ' placed' : ''), textContent: q.title + (q.needed ? '' : ' (optional)'),
      onclick: () => { state.now = q.name; list(); }
    }))));
    all.forEach((q, i) => { const b = ul.children[i].firstChild; if (q.name === state.now) { b.setAttribute('aria-current', 'true'); if (focused) b.focus(); } b.dataset.point = q.name; if (at().has(q.name)) b.append(el('span', { className: 'sr', textContent: ', placed' })); });
    const q = all.find(x => x.name === state.now);
    $('#point-title').textContent = q.title;
    $('#point-where').textContent = q.where;
    $('#point-source').textContent = q.source;
    $('#point-count').textContent = all.filter(x => x.needed && at().has(x.name)).length + ' of ' + all.filter(x => x.needed).length + ' needed' + (state.second ? ', second placing' : '');
    figure(q.name);
    view.points = [...at()].map(([name, p]) => ({ name, x: p.x, y: p.y, now: name === state.now }));
    view.draw();
    if (window.measureScan && state.kind === 'surface-scan') window.measureScan.mark(at(), state.now);
    const twice = state.guide.twice.filter(n => state.points.has(n)).length === state.guide.twice.length;
    $('#measure-second').disabled = state.second || !twice;
    $('#measure-second-done').hidden = !state.second;
    $('#measure-undo').disabled = !state.undone.length;
    root.querySelectorAll('#measure-forget, [data-nudge]').forEach(b => { b.disabled = !at().has(state.now); });
  }

  function figure(name) {
    const g = $('#point-here'), p = state.guide.places[name];
    g.setAttribute('visibility', p ? 'visible' : 'hidden');
    if (p) g.setAttribute('transform', `translate(${p[0]} ${p[1]})`);
  }

  function drawFigure() {
    const svg = $('#point-figure'), ns = 'http://www.w3.org/2000/svg', box = state.guide.box.split(' ').map(Number);
    svg.setAttribute('viewBox', state.guide.box);
    const r = box[2] / 36;
    const make = (tag, a) => { const e = document.createElementNS(ns, tag); for (const k in a) e.setAttribute(k, a[k]); return e; };
    const here = make('g', { id: 'point-here' });
    here.append(make('circle', { r: 1.9 * r, class: 'halo' }), make('circle', { r: 0.7 * r, class: 'spot' }));
    svg.replaceChildren(...state.guide.outlines.map(o => make('path', { d: o.d, class: o.tone, 'stroke-width': box[2] / 170 })), here);
  }

  // ---- numbers ----

  const number = id => { const t = $(id).value.trim().replace(',', '.'); return t === '' || !isFinite(t) ? null : Number(t); };
  function sent() {
    const how = $('#scale-how').value, s = { how };
    if (how === 'length') Object.assign(s, { mm: number('#scale-mm'), tooth: $('#scale-tooth').checked, flatbed: $('#scale-flatbed').checked, below: number('#scale-below'), distance: number('#scale-distance') === null ? null : 10 * number('#scale-distance') });
    if (how === 'frame') Object.assign(s, { width: number('#scale-width'), height: number('#scale-height') });
    if (how === 'spacing') { const m = $('#scale-meaning').value; Object.assign(s, { column: number('#scale-column'), row: number('#scale-row'), corrected: m === 'CORRECTED', magnification: number('#scale-percent') === null ? null : 1 + number('#scale-percent') / 100 }); }
    for (const k in s) if (s[k] === null) delete s[k];
    const flat = m => [...m].map(([name, p]) => p.z === undefined ? { name, x: p.x, y: p.y } : { name, x: p.x, y: p.y, z: p.z });
    return { kind: state.kind, points: flat(state.points), again: state.second ? [] : flat(state.again), share: Number($('#tipping-share').value), scale: s };
  }

  let asking = null;
  async function numbers() {
    if (asking) asking.abort();
    const mine = asking = new AbortController();
    try {
      const r = await fetch(base + '/measure/numbers', { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(sent()), signal: mine.signal });
      const j = await r.json();
      if (mine.signal.aborted) return;
      if (!r.ok) { said(j.error + ' ' + (j.mend || ''), true); return; }
      said('');
      state.result = j;
      table(j);
    } catch (e) { if (e.name !== 'AbortError') said('The program does not answer. The points stay on this page.', true); }
  }

  const chosen = new Map();
  function table(j) {
    const offers = new Map(j.offers.map(o => [o.field, o]));
    $('#measure-values').replaceChildren(...j.values.map(v => {
      const o = offers.get(v.field), can = o && !o.refusal;
      const on = can && (chosen.has(v.field) ? chosen.get(v.field) : !o.there);
      const box = el('input', { type: 'checkbox', value: v.field, checked: on, disabled: !can, onchange: e => { chosen.set(v.field, e.target.checked); takeText(); } });
      box.setAttribute('aria-label', 'Take ' + v.title);
      const there = !o ? 'for looking only' : o.refusal ? o.refusal : o.there ? 'case: ' + o.there + '; with it ' + o.becomes : 'not in the case yet';
      const tr = el('tr', {}, el('td', {}, box), el('th', { scope: 'row' }, v.title, v.note ? el('span', { className: 'small soft block', textContent: v.note }) : ''), el('td', { className: 'number', textContent: v.text }), el('td', { className: 'small soft', textContent: there }));
      tr.dataset.field = v.field;
      return tr;
    }));
    $('#measure-waiting').replaceChildren(...j.waiting.map(w => el('li', { textContent: w.title + ': ' + w.points.map(title).join(', ') })));
    $('#measure-waiting-box').hidden = !j.waiting.length;
    $('#measure-doubts').replaceChildren(...j.doubts.map(d => el('p', { className: 'notice small', textContent: d })));
    $('#measure-error').textContent = (j.scale === 'millimetres' ? 'Lengths are taken as mm of the scan. ' : j.scale ? 'Scale ± ' + j.scaleErrorPercent.toFixed(1) + ' %, the same way in all lengths of this picture. ' : 'Without a scale there are angles only. ')
      + (j.ownErrorMm === undefined ? 'Errors of placing are assumed until five points are placed a second time.' : 'Your own error of placing (Dahlberg): ' + j.ownErrorMm.toFixed(2) + ' mm for a point.');
    arch(j.form);
    $('#measure-numbers').hidden = false;
    takeText();
  }
  const families = { beta: 'beta function', 'sixth-degree': 'polynomial of the sixth degree' };
  function arch(form) {
    const p = $('#measure-form'), wanted = state.kind === 'arch-picture' || state.kind === 'surface-scan';
    p.hidden = !wanted;
    p.textContent = form ? 'Arch form: ' + families[form.family] + ' through ' + form.points + ' points, which lie ' + form.residual.toFixed(2) + ' mm off it (SD). Kept as landmarks, they give the case this form.'
      : 'Arch form: place the labial points of the incisors too (optional points); it needs five points from tube to tube.';
    view.form = form ? form.line : [];
    view.draw();
  }
  const title = n => { const q = asked().find(p => p.name === n) || state.guide.points.find(p => p.name === n); return q ? q.title : n; };
  const taking = () => [...root.querySelectorAll('#measure-values input:checked')].map(i => i.value);
  function takeText() { const n = taking().length; $('#measure-take').disabled = !n || state.second; $('#measure-take').textContent = !n ? 'Take into the case' : n === 1 ? 'Take 1 reading into the case' : 'Take ' + n + ' readings into the case'; }

  $('#measure-take').onclick = async () => {
    const body = { ...sent(), version, take: taking(), landmarks: $('#take-landmarks').checked };
    const r = await fetch(base + '/measure/take', { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body) });
    const j = await r.json();
    if (!r.ok) { said(j.error + ' ' + (j.mend || ''), true); return; }
    version = j.version;
    let kept = '';
    if ($('#keep').checked && state.file && state.kind !== 'surface-scan') {
      const q = new URLSearchParams({ kind: state.kind });
      state.covers.forEach(c => q.append('cover', c.join(',')));
      const k = await fetch(base + '/measure/keep?' + q, { method: 'POST', headers: { 'Content-Type': 'application/octet-stream' }, body: state.file });
      const a = await k.json();
      kept = k.ok ? ' The picture is kept as ' + a.kept + '.' : ' The picture was not kept: ' + a.error;
    }
    chosen.clear();
    await numbers();
    said((j.taken === 1 ? '1 reading is' : j.taken + ' readings are') + ' in the case, marked as taken by picture.' + kept);
  };

  // ---- second placing, scale, tools ----

  $('#measure-second').onclick = () => { remember(); state.second = true; state.again = new Map(); state.now = null; view.fit(); changed(); said('Place the five points again; what you placed before is hidden.'); };
  $('#measure-second-done').onclick = () => { state.second = false; changed(); };
  $('#measure-undo').onclick = undo;
  $('#measure-forget').onclick = forget;
  $('#measure-in').onclick = () => zoom(1.5);
  $('#measure-out').onclick = () => zoom(1 / 1.5);
  const zoom = f => { if (state.kind === 'surface-scan') window.measureScan.zoom(f); else view.zoom(f); };
  $('#measure-fit').onclick = () => view.fit();
  $('#measure-cover').onclick = () => { view.covering = true; said('Draw a rectangle over what tells who it is.'); };
  $('#measure-uncover').onclick = () => { state.covers.pop(); view.draw(); coverText(); };
  const coverText = () => { $('#measure-uncover').hidden = !state.covers.length; said(state.covers.length ? 'Covered. The pixels below are taken out of the picture that is kept.' : ''); };
  root.querySelectorAll('[data-nudge]').forEach(b => { b.onclick = () => {
    const [dx, dy] = b.dataset.nudge.split(' ').map(Number), p = at().get(state.now);
    if (p) { remember(); at().set(state.now, { ...p, x: p.x + dx / view.scale, y: p.y + dy / view.scale }); changed(); }
  }; });

  function scaleForm() {
    const how = $('#scale-how').value;
    root.querySelectorAll('[data-scale]').forEach(f => { f.hidden = f.dataset.scale !== how; });
    root.querySelectorAll('[data-kinds]').forEach(f => { f.hidden = !f.dataset.kinds.split(' ').includes(state.kind); });
    $('#scale-percent').closest('label').hidden = $('#scale-meaning').value === 'CORRECTED';
    if (state.guide) changed();
  }
  root.querySelectorAll('.measure-scale input, .measure-scale select').forEach(i => { i.addEventListener('change', scaleForm); });
  $('#tipping-share').addEventListener('change', () => changed());

  async function kind(k) {
    const r = await fetch('/measure/guide/' + k);
    if (!r.ok) { said('The program does not answer.', true); return; }
    state.guide = await r.json();
    Object.assign(state, { kind: k, points: new Map(), again: new Map(), second: false, now: null, undone: [] });
    chosen.clear();
    $('#scale-how').replaceChildren(...(k === 'lateral-cephalogram' ? [['length', 'Ruler in the film'], ['spacing', 'Pixel spacing'], ['none', 'No scale: angles only']]
      : k === 'arch-picture' ? [['length', 'Ruler or known length'], ['frame', 'Printed frame round the arch']] : [['none', 'No scale is needed']]).map(([v, t]) => el('option', { value: v, textContent: t })));
    $('#measure-desk').hidden = true;
    $('#measure-file').value = '';
    drawFigure();
    scaleForm();
  }
  const BEGINNING = 1 << 17;
  root.querySelectorAll('[name=kind]').forEach(i => { i.addEventListener('change', () => kind(i.value)); });

  $('#measure-file').addEventListener('change', async e => {
    const file = e.target.files[0];
    if (!file) return;
    if (file.size > 100 * 1024 * 1024) { said('The file has more than 100 MB. Export it smaller.', true); return; }
    said('Reading the picture…');
    if (state.kind === 'surface-scan') { await openScan(file); return; }
    // how large a picture is stands at its beginning; the whole file is sent only where the program has to decode it
    const ask = body => fetch(base + '/measure/picture' + (body === file ? '' : '?beginning=yes'), { method: 'POST', headers: { 'Content-Type': 'application/octet-stream' }, body });
    let r = await ask(file.size > BEGINNING ? file.slice(0, BEGINNING) : file);
    if (r.status === 202) r = await ask(file);
    if (!r.ok) { const j = await r.json().catch(() => ({ error: 'The picture could not be read.' })); said(j.error + ' ' + (j.mend || ''), true); return; }
    const about = JSON.parse(r.headers.get('X-Picture'));
    let bitmap;
    try { bitmap = await createImageBitmap(about.own ? file : await r.blob()); } catch (e) { said('The picture is damaged. Open it in a viewer of pictures and export it as PNG.', true); return; }
    Object.assign(state, { file, covers: [], points: new Map(), again: new Map(), second: false, now: null, undone: [] });
    chosen.clear();
    view.form = [];
    view.covers = state.covers;
    if (about.spacing) {
      $('#scale-how').value = 'spacing';
      $('#scale-column').value = about.spacing.column; $('#scale-row').value = about.spacing.row; $('#scale-meaning').value = about.spacing.meaning;
      $('#scale-percent').value = about.spacing.magnification ? ((about.spacing.magnification - 1) * 100).toFixed(1) : '';
    }
    $('#measure-desk').hidden = false;
    stage();
    view.show(bitmap);
    said((about.warnings || []).join(' '));
    scaleForm();
    $('#measure-canvas').focus();
  });

  // ---- surface scans: their view is large and is fetched when it is wanted ----

  const scanKey = e => { if (e.key === 'Backspace') { e.preventDefault(); undo(); } else if (e.key === 'n') next(1); else if (e.key === 'p') next(-1); else if (e.key === 'Delete') forget(); };
  const script = () => window.measureScan ? Promise.resolve() : new Promise((good, bad) => document.head.append(el('script', { src: root.dataset.scan, onload: good, onerror: bad })));
  async function openScan(file) {
    const r = await fetch(base + '/measure/scan', { method: 'POST', headers: { 'Content-Type': 'application/octet-stream' }, body: file });
    if (!r.ok) { const j = await r.json().catch(() => ({ error: 'The scan could not be read.' })); said(j.error + ' ' + (j.mend || ''), true); return; }
    const about = JSON.parse(r.headers.get('X-Picture')), xyz = new Float32Array(await r.arrayBuffer());
    await script();
    Object.assign(state, { file, covers: [], points: new Map(), again: new Map(), second: false, now: null, undone: [] });
    chosen.clear();
    $('#measure-desk').hidden = false;
    stage();
    try { window.measureScan.show(xyz, { place, said, key: scanKey }); } catch (e) { said('This browser cannot draw in three dimensions. Measure on a photograph or a table of points.', true); return; }
    said(about.warnings.join(' '));
    scaleForm();
    $('#scan-canvas').focus();
  }
  function stage() {
    const scan = state.kind === 'surface-scan';
    $('.card.measure-scale').hidden = scan || state.kind === 'panoramic';
    $('#scan-canvas').hidden = !scan;
    $('#measure-canvas').hidden = scan;
    if (scan) $('#measure-loupe').hidden = true;
    root.querySelectorAll('[data-nudge], #measure-fit, #measure-cover').forEach(b => { b.hidden = scan; });
    $('#keep').closest('label').hidden = scan;
  }

  kind('arch-picture');
})();
