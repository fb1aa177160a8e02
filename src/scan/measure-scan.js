// A surface scan, drawn when something changes, with points picked on its triangles. Bundled into
// src/main/resources/web/measure-scan.js; DEVELOPERS.md says how.
import {
  AmbientLight, BufferAttribute, BufferGeometry, Color, DirectionalLight, DoubleSide, Mesh, MeshBasicMaterial, MeshLambertMaterial, OrthographicCamera, Raycaster, Scene, SphereGeometry, Vector2, Vector3, WebGLRenderer
} from 'three';
import { OrbitControls } from 'three/addons/controls/OrbitControls.js';
import { MeshBVH, acceleratedRaycast } from 'three-mesh-bvh';

const ball = new SphereGeometry(1, 16, 12);
const tones = { placed: new MeshBasicMaterial({ color: 0x0b5568 }), now: new MeshBasicMaterial({ color: 0xb3261e }) };

class Scan {
  constructor(canvas, cross) {
    this.canvas = canvas; this.cross = cross; this.balls = new Map(); this.at = { x: 0.5, y: 0.5 };
    this.renderer = new WebGLRenderer({ canvas, antialias: true });
    this.scene = new Scene();
    this.scene.background = new Color(0x16191c);
    this.camera = new OrthographicCamera();
    this.scene.add(new AmbientLight(0xffffff, 1.1));
    this.sun = new DirectionalLight(0xffffff, 2.2);
    this.camera.add(this.sun);
    this.sun.position.set(0.4, 0.8, 1);
    this.scene.add(this.camera);
    this.controls = new OrbitControls(this.camera, canvas);
    this.controls.addEventListener('change', () => this.draw());
    this.caster = new Raycaster();
    this.caster.firstHitOnly = true;
    new ResizeObserver(() => this.resize()).observe(canvas);
    canvas.addEventListener('pointerdown', e => { this.down = [e.clientX, e.clientY]; canvas.focus({ preventScroll: true }); cross.hidden = true; });
    canvas.addEventListener('pointerup', e => {
      if (!this.down || Math.hypot(e.clientX - this.down[0], e.clientY - this.down[1]) > 5) return;
      const r = canvas.getBoundingClientRect();
      this.pick((e.clientX - r.left) / r.width, (e.clientY - r.top) / r.height);
    });
    canvas.addEventListener('keydown', e => this.key(e));
  }

  show(xyz, hooks) {
    this.hooks = hooks;
    if (this.mesh) { this.scene.remove(this.mesh); this.mesh.geometry.dispose(); }
    for (const b of this.balls.values()) this.scene.remove(b);
    this.balls.clear();
    const g = new BufferGeometry();
    g.setAttribute('position', new BufferAttribute(xyz, 3));
    g.computeVertexNormals();
    const t = performance.now();
    g.boundsTree = new MeshBVH(g);
    this.built = performance.now() - t;
    g.computeBoundingSphere();
    this.mesh = new Mesh(g, new MeshLambertMaterial({ color: 0xe8dfcf, side: DoubleSide }));
    this.mesh.raycast = acceleratedRaycast;
    this.scene.add(this.mesh);
    const s = g.boundingSphere;
    this.radius = s.radius;
    this.controls.target.copy(s.center);
    this.camera.position.copy(s.center).add(new Vector3(0, -0.001, s.radius * 3));
    this.camera.up.set(0, 1, 0);
    this.camera.near = 0.1; this.camera.far = s.radius * 8; this.camera.zoom = 1;
    this.resize();
    this.controls.update();
    this.render();
  }

  resize() {
    const r = this.canvas.getBoundingClientRect();
    if (!r.width || !this.radius) return;
    this.renderer.setPixelRatio(Math.min(2, window.devicePixelRatio || 1));
    this.renderer.setSize(r.width, r.height, false);
    const k = r.width / r.height, h = this.radius * 1.05 / Math.min(1, k);
    Object.assign(this.camera, { left: -h * k, right: h * k, top: h, bottom: -h });
    this.camera.updateProjectionMatrix();
    this.draw();
  }

  draw() { if (!this.due) this.due = requestAnimationFrame(() => { this.due = 0; this.render(); }); }
  render() {
    for (const b of this.balls.values()) b.scale.setScalar(0.011 * this.radius / this.camera.zoom);
    this.renderer.render(this.scene, this.camera);
  }

  pick(x, y) {
    if (!this.mesh) return;
    const t = performance.now();
    this.caster.setFromCamera(new Vector2(2 * x - 1, 1 - 2 * y), this.camera);
    const hit = this.caster.intersectObject(this.mesh)[0];
    this.picked = performance.now() - t;
    if (hit) this.hooks.place({ x: hit.point.x, y: hit.point.y, z: hit.point.z });
    else this.hooks.said('There is no surface at that place.');
  }

  /** Where a point of the scan is shown, as shares of width and height. */
  seen(p) { const v = new Vector3(p.x, p.y, p.z).project(this.camera); return [(v.x + 1) / 2, (1 - v.y) / 2]; }

  key(e) {
    const r = this.canvas.getBoundingClientRect(), s = (e.shiftKey ? 10 : 1);
    const arrows = { ArrowLeft: [-s, 0], ArrowRight: [s, 0], ArrowUp: [0, -s], ArrowDown: [0, s] };
    if (arrows[e.key]) {
      e.preventDefault();
      this.at.x = Math.min(1, Math.max(0, this.at.x + arrows[e.key][0] / r.width));
      this.at.y = Math.min(1, Math.max(0, this.at.y + arrows[e.key][1] / r.height));
      this.cross.hidden = false;
      this.cross.setAttribute('x', this.at.x * r.width - 12); this.cross.setAttribute('y', this.at.y * r.height - 12);
    } else if (e.key === 'Enter' || e.key === ' ') { e.preventDefault(); this.pick(this.at.x, this.at.y); }
    else if (e.key === '+' || e.key === '=' || e.key === '-') {
      e.preventDefault();
      this.camera.zoom = Math.min(40, Math.max(0.3, this.camera.zoom * (e.key === '-' ? 1 / 1.3 : 1.3)));
      this.camera.updateProjectionMatrix();
      this.draw();
    } else this.hooks.key(e);
  }

  mark(points, now) {
    for (const [n, b] of this.balls) if (!points.has(n)) { this.scene.remove(b); this.balls.delete(n); }
    for (const [n, p] of points) {
      let b = this.balls.get(n);
      if (!b) { b = new Mesh(ball, tones.placed); this.balls.set(n, b); this.scene.add(b); }
      b.material = n === now ? tones.now : tones.placed;
      b.position.set(p.x, p.y, p.z);
    }
    if (this.mesh) this.draw();
  }
}

let scan = null;
window.measureScan = {
  show(xyz, hooks) {
    scan = scan || new Scan(document.getElementById('scan-canvas'), document.getElementById('scan-cross'));
    scan.show(xyz, hooks);
  },
  mark(points, now) { if (scan) scan.mark(points, now); },
  zoom(f) { if (scan) { scan.camera.zoom *= f; scan.camera.updateProjectionMatrix(); scan.draw(); } },
  seen: p => scan.seen(p),
  get picked() { return scan.picked; },
  get built() { return scan.built; }
};
