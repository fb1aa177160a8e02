'use strict';
// What plain HTML cannot do by itself. Everything essential works without this file.
(() => {
  const $ = (sel, root) => (root || document).querySelector(sel);
  const $$ = (sel, root) => Array.from((root || document).querySelectorAll(sel));

  // a mark for unknown or inapplicable and a value exclude each other
  document.addEventListener('change', e => {
    const t = e.target;
    if (t.name && t.name.startsWith('state:') && t.checked) {
      const field = t.closest('.field');
      $$('.control > input, .control > textarea', field).forEach(i => { i.value = ''; });
      $$('.states input', field).forEach(i => { if (i !== t) i.checked = false; });
    }
  }, true);
  document.addEventListener('input', e => {
    if (e.target.matches('.control > input, .control > textarea') && e.target.value) {
      $$('.states input', e.target.closest('.field')).forEach(i => { i.checked = false; });
    }
  }, true);

  // Enter goes to the next field instead of sending the whole form; in a grid it goes down
  document.addEventListener('keydown', e => {
    const t = e.target;
    const cell = t.closest && t.closest('table.grid td');
    if (cell && t.matches('input.number') && ['Enter', 'ArrowDown', 'ArrowUp'].includes(e.key)) {
      const row = cell.parentElement;
      const to = e.key === 'ArrowUp' ? row.previousElementSibling : row.nextElementSibling;
      const next = to && to.children[cell.cellIndex] && $('input:not([type=checkbox]), select', to.children[cell.cellIndex]);
      if (next || e.key === 'Enter') e.preventDefault();
      if (next) { next.focus(); if (next.select) next.select(); return; }
      if (e.key === 'Enter') { step(t); }
    } else if (e.key === 'Enter' && t.matches && t.matches('#facts input:not([type=hidden])')) {
      e.preventDefault();
      step(t);
    }
  });
  // the criteria that look at a fact are one key away, and no stop on the way to the next field
  document.addEventListener('keydown', e => {
    const place = e.target.closest && e.target.closest('.line, td');
    const uses = place && $('.uses', place);
    if (!uses) return;
    if (e.key === 'F2') {
      e.preventDefault();
      uses.open = true;
      $('a', uses).focus();
    } else if (e.key === 'Escape' && uses.open) {
      uses.open = false;
      $('.control :is(input, select, textarea)', place).focus();
    }
  });
  function step(from) {
    const stops = $$('#facts input:not([type=hidden]):not([tabindex="-1"]), #facts select, #facts textarea, #facts .actions button').filter(x => x.offsetParent);
    const i = stops.indexOf(from);
    const next = stops.slice(i + 1).find(x => x.type !== 'radio' || x.name !== from.name);
    if (next) { next.focus(); if (next.select) next.select(); }
  }

  // the whole form is sent only after what was sent field by field has arrived, or the older could overtake the newer
  let underway = 0;
  let waiting = null;
  document.addEventListener('htmx:before:request', () => { underway++; });
  document.addEventListener('htmx:finally:request', () => {
    underway = Math.max(0, underway - 1);
    setTimeout(() => {
      if (underway === 0 && waiting) {
        const { form, button } = waiting;
        waiting = null;
        form.requestSubmit(button);
      }
    });
  });
  document.addEventListener('submit', e => {
    if (underway > 0 && e.target.matches('form')) {
      e.preventDefault();
      waiting = { form: e.target, button: e.submitter };
    }
  });

  // a finding beside the form is a line until it is opened
  async function body(details) {
    const place = $('.body[data-body]', details);
    if (!place) return;
    const from = place.dataset.body;
    delete place.dataset.body;
    const answer = await fetch(from, { headers: { 'HX-Request': 'true' } }).catch(() => null);
    if (answer && answer.ok && place.isConnected) { place.innerHTML = await answer.text(); if (window.htmx) window.htmx.process(place); }
  }
  document.addEventListener('toggle', e => { if (e.target.matches('.finding') && e.target.open) body(e.target); }, true);
  document.addEventListener('htmx:config:request', e => {
    // a look at what is being typed comes too late once the field was left
    if (e.detail.ctx.request.action.includes('/preview?') && pending !== e.detail.ctx.sourceElement) {
      e.preventDefault();
      return;
    }
    const form = e.detail.ctx.request.body;
    if (form && form.append) form.append('open', $$('#findings .finding[open]').map(d => d.id).join());
  });

  // findings that were open stay open when they are renewed
  let open = null;
  document.addEventListener('htmx:before:swap', () => {
    const panel = $('#findings');
    if (panel && !open) open = new Map($$('details[id]', panel).map(d => [d.id, d.open]));
  });
  document.addEventListener('htmx:finally:swap', () => {
    const panel = $('#findings');
    if (panel && open) $$('details[id]', panel).forEach(d => { if (open.has(d.id)) d.open = open.get(d.id); });
    open = null;
  });

  // a field's colour follows what was said beside it
  document.addEventListener('htmx:finally:swap', () => {
    $$('.field').forEach(f => {
      const note = $('.note', document.getElementById('n' + f.id.slice(1)) || f);
      const wrong = !!note && note.classList.contains('error');
      f.classList.toggle('error', wrong);
      $$('.control > input:not([type=checkbox]), .control > textarea', f).forEach(i => { wrong ? i.setAttribute('aria-invalid', 'true') : i.removeAttribute('aria-invalid'); });
    });
  });

  // links to a finding or a field open what they point to
  function reveal() {
    const id = decodeURIComponent(location.hash.slice(1));
    const target = id && document.getElementById(id);
    if (!target) return;
    for (let d = target.closest('details'); d; d = d.parentElement.closest('details')) d.open = true;
    const field = target.matches('input, select, textarea') ? target : $('input:checked, input', target.matches('.segments') ? target : null) ;
    if (target.closest('.field') && field) field.focus();
    target.scrollIntoView({ block: 'center' });
    const mark = target.closest('.field') || target;
    mark.classList.add('shown');
    setTimeout(() => mark.classList.remove('shown'), 2500);
  }
  // a criterion leads to its finding where it is judged, else to the book
  document.addEventListener('click', e => {
    const to = e.target.closest && e.target.closest('[data-finding]');
    if (!to || !document.getElementById(to.dataset.finding)) return;
    e.preventDefault();
    if (location.hash === '#' + to.dataset.finding) reveal(); else location.hash = to.dataset.finding;
  });
  window.addEventListener('hashchange', reveal);
  window.addEventListener('DOMContentLoaded', reveal);
  if (document.readyState !== 'loading') reveal();

  // what stands in a field that was not left yet goes along when the page goes; should the page be quicker back than that, it is put in again
  const KEY = 'typing:' + location.pathname;
  const keep = what => { try { what ? sessionStorage.setItem(KEY, JSON.stringify(what)) : sessionStorage.removeItem(KEY); } catch (e) { /* a browser may forbid it */ } };
  let pending = null;
  document.addEventListener('input', e => {
    if (!e.target.closest('#facts .field[hx-post]') || !e.target.matches('input[type=text], input[type=date], textarea')) return;
    pending = e.target;
    keep({ id: pending.id, was: pending.defaultValue, now: pending.value });
  }, true);
  document.addEventListener('change', e => { if (e.target === pending) pending = null; }, true);
  document.addEventListener('htmx:after:request', e => { if (!pending && e.detail.ctx.sourceElement.matches('.field')) keep(null); });
  window.addEventListener('pagehide', () => {
    const field = pending && pending.isConnected && pending.closest('.field[hx-post]');
    if (field) navigator.sendBeacon(field.getAttribute('hx-post'), new URLSearchParams(new FormData(pending.form)));
    pending = null;
  });
  function putBack() {
    let kept = null;
    try { kept = JSON.parse(sessionStorage.getItem(KEY)); } catch (e) { return; }
    const field = kept && document.getElementById(kept.id);
    keep(null);
    if (!field || field.defaultValue === kept.now) return;
    if (field.defaultValue !== kept.was) {
      $('#others').textContent = 'Typed before and not put in again, since the case was changed meanwhile: ' + kept.now;
      return;
    }
    field.value = kept.now;
    field.dispatchEvent(new Event('change', { bubbles: true }));
  }
  document.addEventListener('htmx:after:process', putBack, { once: true });

  // an entry that is being added has the focus
  const fresh = $('[data-fresh] .control :is(input:not([type=hidden]), select, textarea)');
  if (fresh) fresh.focus();

  // the current section is in sight where sections stand in a row
  const here = $('.sections [aria-current]');
  if (here && here.parentElement.parentElement.scrollWidth > innerWidth) $('.sections').scrollLeft = here.offsetLeft - 60;

  $$('.tabs').forEach(tabs => {
    const tab = $('[aria-current]', tabs);
    if (tab && tabs.scrollWidth > tabs.clientWidth) tabs.scrollLeft = tab.offsetLeft - 40;
  });

  // while the program does not answer, what was typed stays marked in the page and is sent in the order in which it was left
  const unsaved = [];
  let away = false;
  let resending = null;
  let kept = null;
  const live = el => el && el.matches && el.matches('#facts .field[hx-post]');
  function unsave(field) {
    const i = unsaved.indexOf(field.id);
    if (i >= 0) unsaved.splice(i, 1);
    unsaved.push(field.id);
  }
  function tell() {
    const box = $('#offline');
    if (box) box.hidden = !away;
    const n = unsaved.length;
    const count = $('#unsaved-count');
    if (count) count.textContent = n === 0 ? '' : n === 1 ? '1 field is not saved yet.' : n + ' fields are not saved yet.';
    $$('.field.unsaved').forEach(f => { if (!unsaved.includes(f.id)) f.classList.remove('unsaved'); });
    if (away) unsaved.forEach(id => { const f = document.getElementById(id); if (f) f.classList.add('unsaved'); });
  }
  function gone() {
    if (!away) setTimeout(knock, 1500);
    away = true;
    tell();
  }
  const alive = async () => { try { return (await fetch('/alive', { cache: 'no-store' })).ok; } catch (e) { return false; } };
  async function knock() {
    if (!await alive()) { setTimeout(knock, 1500); return; }
    away = false;
    while (unsaved.length && !away) {
      const id = unsaved[0];
      const field = document.getElementById(id);
      if (!field) { unsaved.shift(); continue; }
      resending = id;
      const done = new Promise(r => document.addEventListener('htmx:finally:request', function end(e) {
        if (e.detail.ctx.sourceElement === field) { document.removeEventListener('htmx:finally:request', end); r(); }
      }));
      field.dispatchEvent(new Event('change'));
      await done;
      resending = null;
      if (unsaved[0] === id) { gone(); return; }
      tell();
    }
    tell();
    if (kept && !away) { const { form, button } = kept; kept = null; sure = true; form.requestSubmit(button); }
  }
  document.addEventListener('change', e => {
    const field = e.target.closest && e.target.closest('.field');
    if (live(field) && !resending) { unsave(field); if (away) tell(); }
  }, true);
  document.addEventListener('htmx:before:request', e => {
    const from = e.detail.ctx.sourceElement;
    if (away && !(from && from.id === resending)) e.preventDefault();
  });
  document.addEventListener('htmx:error', e => {
    if (e.detail.error && e.detail.error.name === 'AbortError') return;
    const from = e.detail.ctx && e.detail.ctx.sourceElement;
    if (live(from) && !unsaved.includes(from.id)) unsave(from);
    gone();
  });
  document.addEventListener('htmx:after:request', e => {
    const from = e.detail.ctx.sourceElement;
    if (!live(from)) return;
    const status = e.detail.ctx.response.status;
    if (status >= 500 || status === 401) { gone(); return; }
    const i = unsaved.indexOf(from.id);
    if (i >= 0) unsaved.splice(i, 1);
    tell();
  });
  // a whole form is sent only to a program that answers; until then it waits in the page
  let sure = false;
  document.addEventListener('submit', async e => {
    if (e.defaultPrevented || e.target.method !== 'post') return;
    if (sure) { sure = false; return; }
    e.preventDefault();
    const form = e.target;
    const button = e.submitter;
    if (!away && await alive()) { sure = true; form.requestSubmit(button); } else { kept = { form, button }; gone(); }
  });
  window.addEventListener('beforeunload', e => { if (away && (unsaved.length || kept)) { e.preventDefault(); e.returnValue = ''; } });

  // a page that the browser kept may be older than the file
  window.addEventListener('pageshow', e => { if (e.persisted) location.reload(); });

  // drop a file anywhere on the list of cases
  const drop = $('#import');
  if (drop) {
    const input = $('input[type=file]', drop);
    document.addEventListener('dragover', e => { e.preventDefault(); document.body.classList.add('dropping'); });
    document.addEventListener('dragleave', e => { if (!e.relatedTarget) document.body.classList.remove('dropping'); });
    document.addEventListener('drop', e => {
      e.preventDefault();
      document.body.classList.remove('dropping');
      if (e.dataTransfer.files.length === 1) { input.files = e.dataTransfer.files; drop.requestSubmit(); }
    });
  }
  // answers to what a person says was looked at and not seen; the day of a new visit is today unless changed
  const fill = $('[data-fill]');
  if (fill) {
    fill.hidden = false;
    fill.addEventListener('click', () => ['newRecession', 'blanching', 'lastingPain'].forEach(key => {
      const no = $$('.log input[type=radio][value=no]').find(i => i.name.endsWith('/' + key));
      if (no) no.checked = true;
    }));
    const day = $('.log input[type=date]');
    if (day && !day.value) day.value = $('[data-today]').dataset.today;
  }
  // plus and minus beside a number
  document.addEventListener('click', e => {
    const b = e.target.closest && e.target.closest('[data-step]');
    const box = b && $('input.big-input', b.form);
    if (!box) return;
    const at = parseFloat(box.value.replace(',', '.'));
    // an empty box begins where the number is expected; nothing is written before it is taken
    const now = Math.max(parseFloat(box.dataset.least), Number.isFinite(at) ? at + parseFloat(b.dataset.step) : parseFloat(box.dataset.from || b.dataset.step));
    box.value = String(Math.round(now * 100) / 100);
  });
  // what is long is folded on a small screen
  if (matchMedia('(max-width: 40rem)').matches) $$('[data-narrow=closed]').forEach(d => { if (!d.contains(document.getElementById(location.hash.slice(1)))) d.open = false; });
  // on a small screen the verdict is one line until it is asked for
  const verdict = $('.verdict > details');
  if (verdict && matchMedia('(max-width: 68rem)').matches) verdict.open = false;
  document.addEventListener('click', e => { if (e.target.closest && e.target.closest('[data-print]')) window.print(); });
})();
