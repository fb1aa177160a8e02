// Filters of the audit page; without script everything is shown.
for (const box of document.querySelectorAll('.filters')) {
  box.hidden = false;
  const things = [...document.querySelectorAll('details.' + box.dataset.for)];
  const shown = box.querySelector('.shown');
  const apply = () => {
    let n = 0;
    for (const thing of things) {
      let fits = true;
      for (const field of box.querySelectorAll('[data-filter]')) {
        const key = field.dataset.filter, has = (thing.dataset[key] || '').toLowerCase(), want = field.value.trim().toLowerCase();
        if (field.type === 'checkbox') fits = fits && (!field.checked || Number(has) > 0);
        else if (want) fits = fits && (field.tagName === 'SELECT' ? has === want : has.includes(want));
      }
      thing.hidden = !fits;
      n += fits ? 1 : 0;
    }
    if (shown) shown.textContent = n + ' of ' + things.length + ' shown';
  };
  box.addEventListener('input', apply);
  const open = box.querySelector('[data-open]');
  open.addEventListener('click', () => {
    const close = open.dataset.done === 'yes';
    for (const thing of things) if (!thing.hidden) thing.open = !close;
    open.dataset.done = close ? 'no' : 'yes';
    open.textContent = close ? 'Open all shown' : 'Close all shown';
  });
  apply();
}
// a link to a criterion opens it
const reveal = () => {
  const target = document.getElementById(decodeURIComponent(location.hash.slice(1)));
  if (target && target.tagName === 'DETAILS') { target.hidden = false; target.open = true; target.scrollIntoView(); }
};
window.addEventListener('hashchange', reveal);
reveal();
