'use strict';
// The picture on a canvas: zoom, pan, loupe, and where a finger, mouse or key means to place or move a point.
class MeasureView {
  constructor(canvas, loupe, on) {
    this.canvas = canvas; this.loupe = loupe; this.on = on;
    this.points = []; this.covers = []; this.form = []; this.bitmap = null;
    this.scale = 1; this.x = 0; this.y = 0; this.cursor = null; this.keys = false;
    this.fingers = new Map(); this.drag = null; this.covering = false;
    const c = canvas;
    c.addEventListener('pointerdown', e => this.down(e));
    c.addEventListener('pointermove', e => this.move(e));
    c.addEventListener('pointerup', e => this.up(e));
    c.addEventListener('pointercancel', e => { this.fingers.delete(e.pointerId); this.drag = null; });
    c.addEventListener('pointerleave', () => { if (!this.keys) { this.cursor = null; this.draw(); } });
    c.addEventListener('wheel', e => { if (!this.bitmap) return; e.preventDefault(); this.zoom(Math.exp(-e.deltaY / 400), this.local(e)); }, { passive: false });
    c.addEventListener('keydown', e => this.key(e));
    c.addEventListener('blur', () => { this.keys = false; this.draw(); });
    new ResizeObserver(() => this.resize()).observe(c);
    matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => this.draw());
  }

  show(bitmap) {
    this.bitmap = bitmap; this.cursor = null; this.small = null;
    // a photograph of twelve million pixels drawn anew at every move is slow without a graphics card
    const k = 1600 / Math.max(bitmap.width, bitmap.height);
    if (k < 0.7) {
      this.enough = k / (window.devicePixelRatio || 1);
      const size = { resizeWidth: Math.round(bitmap.width * k), resizeHeight: Math.round(bitmap.height * k) };
      // made once the picture can be seen; it is used from then on
      setTimeout(() => createImageBitmap(bitmap, size).then(small => { if (this.bitmap === bitmap) this.small = small; }), 500);
    }
    this.resize(); this.fit();
  }

  resize() {
    const r = this.canvas.getBoundingClientRect(), d = window.devicePixelRatio || 1;
    if (!r.width) return;
    this.canvas.width = Math.round(r.width * d); this.canvas.height = Math.round(r.height * d);
    this.ratio = d; this.draw();
  }

  fit() {
    const b = this.bitmap;
    if (!b) return;
    const w = this.canvas.width / this.ratio, h = this.canvas.height / this.ratio;
    this.scale = Math.min(w / b.width, h / b.height);
    this.x = (w - b.width * this.scale) / 2; this.y = (h - b.height * this.scale) / 2;
    this.draw();
  }

  zoom(f, at) {
    const c = at || { x: this.canvas.width / this.ratio / 2, y: this.canvas.height / this.ratio / 2 };
    const to = Math.min(40, Math.max(0.02, this.scale * f)), k = to / this.scale;
    this.x = c.x - (c.x - this.x) * k; this.y = c.y - (c.y - this.y) * k; this.scale = to;
    this.draw();
  }

  /** Brings a place of the picture into sight, as large as is good for placing a point there. */
  look(p) {
    const w = this.canvas.width / this.ratio, h = this.canvas.height / this.ratio;
    const at = { x: this.x + p.x * this.scale, y: this.y + p.y * this.scale };
    if (at.x > 20 && at.y > 20 && at.x < w - 20 && at.y < h - 20) return;
    this.x = w / 2 - p.x * this.scale; this.y = h / 2 - p.y * this.scale;
    this.draw();
  }

  local(e) { const r = this.canvas.getBoundingClientRect(); return { x: e.clientX - r.left, y: e.clientY - r.top }; }
  picture(l) { return { x: (l.x - this.x) / this.scale, y: (l.y - this.y) / this.scale }; }
  inside(p) { return this.bitmap && p.x >= 0 && p.y >= 0 && p.x <= this.bitmap.width && p.y <= this.bitmap.height; }

  near(l, touch) {
    let best = null, far = touch ? 22 : 11;
    for (const p of this.points) {
      if (p.hidden) continue;
      const d = Math.hypot(this.x + p.x * this.scale - l.x, this.y + p.y * this.scale - l.y);
      if (d < far) { far = d; best = p; }
    }
    return best;
  }

  down(e) {
    if (!this.bitmap || e.button > 0) return;
    this.canvas.setPointerCapture(e.pointerId);
    this.canvas.focus({ preventScroll: true });
    this.keys = false;
    const l = this.local(e);
    this.fingers.set(e.pointerId, l);
    if (this.fingers.size === 2) { this.drag = null; this.pinch = this.spread(); return; }
    const p = this.covering ? null : this.near(l, e.pointerType === 'touch');
    this.drag = { from: l, last: l, point: p, far: false, cover: this.covering };
    this.cursor = this.picture(l);
    this.draw();
  }

  spread() {
    const [a, b] = [...this.fingers.values()];
    return { d: Math.hypot(a.x - b.x, a.y - b.y), x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  }

  move(e) {
    if (!this.bitmap) return;
    const l = this.local(e);
    if (this.fingers.has(e.pointerId)) this.fingers.set(e.pointerId, l);
    if (this.fingers.size === 2 && this.pinch) {
      const s = this.spread();
      this.x += s.x - this.pinch.x; this.y += s.y - this.pinch.y;
      this.zoom(s.d / Math.max(1, this.pinch.d), s);
      this.pinch = s;
      return;
    }
    const g = this.drag;
    this.cursor = this.picture(l);
    if (g) {
      g.far = g.far || Math.hypot(l.x - g.from.x, l.y - g.from.y) > 5;
      if (g.far && g.cover) { this.draft = this.rectangle(g.from, l); }
      else if (g.far && g.point) { g.moved = true; g.point.x = this.cursor.x; g.point.y = this.cursor.y; this.on.moving(g.point); }
      else if (g.far) { this.x += l.x - g.last.x; this.y += l.y - g.last.y; }
      g.last = l;
    }
    this.draw();
  }

  rectangle(a, b) {
    const p = this.picture({ x: Math.min(a.x, b.x), y: Math.min(a.y, b.y) }), q = this.picture({ x: Math.max(a.x, b.x), y: Math.max(a.y, b.y) });
    const x = Math.max(0, Math.round(p.x)), y = Math.max(0, Math.round(p.y));
    return [x, y, Math.max(1, Math.round(q.x) - x), Math.max(1, Math.round(q.y) - y)];
  }

  up(e) {
    this.fingers.delete(e.pointerId);
    this.pinch = null;
    const g = this.drag;
    this.drag = null;
    if (!g) return;
    const p = this.picture(this.local(e));
    if (g.cover) { if (this.draft) { this.on.cover(this.draft); this.draft = null; } }
    else if (g.moved) this.on.moved(g.point, p);
    else if (!g.far && this.inside(p)) this.on.place(p);
    if (e.pointerType === 'touch') this.cursor = null;
    this.draw();
  }

  key(e) {
    if (!this.bitmap) return;
    const step = (e.shiftKey ? 10 : 1) / this.scale;
    const arrows = { ArrowLeft: [-step, 0], ArrowRight: [step, 0], ArrowUp: [0, -step], ArrowDown: [0, step] };
    if (arrows[e.key]) {
      e.preventDefault();
      this.keys = true;
      const c = this.cursor || this.picture({ x: this.canvas.width / this.ratio / 2, y: this.canvas.height / this.ratio / 2 });
      this.cursor = { x: Math.min(this.bitmap.width, Math.max(0, c.x + arrows[e.key][0])), y: Math.min(this.bitmap.height, Math.max(0, c.y + arrows[e.key][1])) };
      this.look(this.cursor);
      this.draw();
    } else if ((e.key === 'Enter' || e.key === ' ') && this.cursor) { e.preventDefault(); this.on.place({ ...this.cursor }); }
    else if (e.key === '+' || e.key === '=') { e.preventDefault(); this.zoom(1.4, this.atCursor()); }
    else if (e.key === '-') { e.preventDefault(); this.zoom(1 / 1.4, this.atCursor()); }
    else if (e.key === '0') { e.preventDefault(); this.fit(); }
    else this.on.key(e);
  }

  atCursor() { return this.cursor && { x: this.x + this.cursor.x * this.scale, y: this.y + this.cursor.y * this.scale }; }

  draw() { if (!this.due) { this.due = requestAnimationFrame(() => { this.due = 0; this.paint(); }); } }

  paint() {
    const c = this.canvas.getContext('2d'), d = this.ratio || 1;
    c.setTransform(d, 0, 0, d, 0, 0);
    c.clearRect(0, 0, this.canvas.width, this.canvas.height);
    if (!this.bitmap) { this.loupe.hidden = true; return; }
    c.imageSmoothingEnabled = this.scale < 4;
    c.drawImage(this.small && this.scale <= this.enough ? this.small : this.bitmap, this.x, this.y, this.bitmap.width * this.scale, this.bitmap.height * this.scale);
    c.fillStyle = '#000';
    for (const r of this.draft ? [...this.covers, this.draft] : this.covers) c.fillRect(this.x + r[0] * this.scale, this.y + r[1] * this.scale, r[2] * this.scale, r[3] * this.scale);
    this.line(c, this.form);
    for (const p of this.points) if (!p.hidden) this.mark(c, this.x + p.x * this.scale, this.y + p.y * this.scale, p);
    if (this.cursor && this.keys) this.cross(c, this.x + this.cursor.x * this.scale, this.y + this.cursor.y * this.scale, 12);
    this.magnify();
  }

  /** The arch form through the points. */
  line(c, form) {
    for (const [w, s] of [[4, '#fff'], [2, '#0b5568']]) {
      c.lineWidth = w; c.strokeStyle = s;
      c.beginPath();
      form.forEach((p, i) => c[i ? 'lineTo' : 'moveTo'](this.x + p[0] * this.scale, this.y + p[1] * this.scale));
      c.stroke();
    }
  }

  mark(c, x, y, p) {
    for (const [w, s] of [[4, '#fff'], [2, p.now ? '#b3261e' : '#0b5568']]) {
      c.lineWidth = w; c.strokeStyle = s;
      c.beginPath(); c.arc(x, y, p.now ? 8 : 6, 0, 7); c.stroke();
      c.beginPath(); c.moveTo(x - 2.5, y); c.lineTo(x + 2.5, y); c.moveTo(x, y - 2.5); c.lineTo(x, y + 2.5); c.stroke();
    }
    c.font = '600 12px system-ui, sans-serif';
    c.lineWidth = 3; c.strokeStyle = '#fff'; c.strokeText(p.name, x + 10, y - 6);
    c.fillStyle = '#12303a'; c.fillText(p.name, x + 10, y - 6);
  }

  cross(c, x, y, r) {
    for (const [w, s] of [[3.5, '#fff'], [1.5, '#b3261e']]) {
      c.lineWidth = w; c.strokeStyle = s;
      c.beginPath(); c.moveTo(x - r, y); c.lineTo(x - 2, y); c.moveTo(x + 2, y); c.lineTo(x + r, y); c.moveTo(x, y - r); c.lineTo(x, y - 2); c.moveTo(x, y + 2); c.lineTo(x, y + r); c.stroke();
    }
  }

  /** What lies under the pointer, three times as large as on the picture. */
  magnify() {
    const l = this.loupe, p = this.cursor;
    l.hidden = !p || !this.inside(p);
    if (l.hidden) return;
    const c = l.getContext('2d'), n = l.width, k = Math.max(3 * this.scale, 1) * (this.ratio || 1), half = n / 2 / k;
    c.fillStyle = '#000'; c.fillRect(0, 0, n, n);
    c.imageSmoothingEnabled = k < 4;
    c.drawImage(this.bitmap, p.x - half, p.y - half, 2 * half, 2 * half, 0, 0, n, n);
    for (const q of this.points) if (!q.hidden && Math.abs(q.x - p.x) < half && Math.abs(q.y - p.y) < half) this.mark(c, n / 2 + (q.x - p.x) * k, n / 2 + (q.y - p.y) * k, q);
    this.cross(c, n / 2, n / 2, n / 3);
    const at = this.atCursor(), w = this.canvas.width / (this.ratio || 1);
    l.classList.toggle('right', at.x < w / 2);
  }
}
