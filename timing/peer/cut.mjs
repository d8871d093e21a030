// Cuts a job with a general-purpose mesh boolean library, for a comparison of speed and accuracy in the same run as the engine.
//
//   node cut.mjs JOB.json [--batch]
//
// JOB.json, lengths in millimetres, angles in radians:
//   { "chord": 0.002,                              greatest distance of a chord from its arc
//     "stock": [x0, y0, z0, x1, y1, z1],
//     "cuts": [ { "kind": "line",   "radius", "low", "high", "from": [x, y], "to": [x, y] },
//               { "kind": "arc",    "radius", "low", "high", "centre": [x, y], "from": [x, y], "sweep" },
//               { "kind": "plunge", "radius", "low", "high", "at": [x, y] } ],
//     "lines": [ [axis 0|1|2, u, v], ... ] }       soundings asked of the mesh: along X through (y, z) = (u, v), along Y through (x, z), along Z through (x, y)
// Prints one JSON line: { seconds, cpu, triangles, volume, soundings: [[enter, leave, ...], ...] }; cpu: processor seconds of the same stretch.
import { readFileSync } from 'node:fs';
import Module from 'manifold-3d';

const job = JSON.parse(readFileSync(process.argv[2], 'utf8'));
const batch = process.argv.includes('--batch');
const wasm = await Module();
wasm.setup();
const { Manifold, CrossSection } = wasm;

const steps = (radius, angle) => {
  const widest = 2 * Math.acos(Math.max(0, 1 - job.chord / radius));
  return Math.max(1, Math.ceil(Math.abs(angle) / widest));
};
const arc = (centre, radius, from, sweep) => {
  const count = steps(radius, sweep);
  return Array.from({ length: count + 1 }, (_, i) => {
    const a = from + (sweep * i) / count;
    return [centre[0] + radius * Math.cos(a), centre[1] + radius * Math.sin(a)];
  });
};
const disc = (centre, radius) => arc(centre, radius, 0, 2 * Math.PI).slice(0, -1);

const lineOutline = ({ radius, from, to }) => {
  if (from[0] === to[0] && from[1] === to[1]) {
    return [disc(from, radius)];
  }
  const a = Math.atan2(to[1] - from[1], to[0] - from[0]);
  return [[...arc(to, radius, a - Math.PI / 2, Math.PI), ...arc(from, radius, a + Math.PI / 2, Math.PI)]];
};

const arcSection = ({ radius, centre, from, sweep }) => {
  const reach = Math.hypot(from[0] - centre[0], from[1] - centre[1]);
  const start = Math.atan2(from[1] - centre[1], from[0] - centre[0]);
  if (Math.abs(sweep) >= 2 * Math.PI - 1e-12) {
    const ring = new CrossSection([disc(centre, reach + radius)]);
    return reach > radius ? ring.subtract(new CrossSection([disc(centre, reach - radius)])) : ring;
  }
  const outer = arc(centre, reach + radius, start, sweep);
  const inner = reach > radius ? arc(centre, reach - radius, start + sweep, -sweep) : [centre];
  const band = [...outer, ...inner];
  const sector = new CrossSection([sweep > 0 ? band : band.reverse()], 'NonZero');
  const end = [centre[0] + reach * Math.cos(start + sweep), centre[1] + reach * Math.sin(start + sweep)];
  return CrossSection.union([sector, new CrossSection([disc(from, radius)]), new CrossSection([disc(end, radius)])]);
};

const section = (cut) =>
  cut.kind === 'arc' ? arcSection(cut) : new CrossSection(cut.kind === 'line' ? lineOutline(cut) : [disc(cut.at, cut.radius)]);
const solid = (cut) => section(cut).extrude(cut.high - cut.low).translate([0, 0, cut.low]);

const [x0, y0, z0, x1, y1, z1] = job.stock;
const begun = performance.now();
const used = process.cpuUsage();
let metal = Manifold.cube([x1 - x0, y1 - y0, z1 - z0]).translate([x0, y0, z0]);
if (batch) {
  metal = Manifold.difference([metal, ...job.cuts.map(solid)]);
} else {
  for (const cut of job.cuts) {
    const next = metal.subtract(solid(cut));
    metal.delete?.();
    metal = next;
  }
}
const triangles = metal.numTri();
const volume = metal.volume();
const seconds = (performance.now() - begun) / 1000;
const { user, system } = process.cpuUsage(used);
const cpu = (user + system) / 1e6;

const mesh = metal.getMesh();
const point = (i) => mesh.vertProperties.subarray(i * mesh.numProp, i * mesh.numProp + 3);
const sound = ([axis, u, v]) => {
  const [a, b] = axis === 0 ? [1, 2] : axis === 1 ? [0, 2] : [0, 1];
  const hits = [];
  for (let t = 0; t < mesh.numTri; t++) {
    const [p, q, r] = [0, 1, 2].map((k) => point(mesh.triVerts[3 * t + k]));
    const area = (q[a] - p[a]) * (r[b] - p[b]) - (q[b] - p[b]) * (r[a] - p[a]);
    if (area === 0) continue;
    const s = ((u - p[a]) * (r[b] - p[b]) - (v - p[b]) * (r[a] - p[a])) / area;
    const w = ((q[a] - p[a]) * (v - p[b]) - (q[b] - p[b]) * (u - p[a])) / area;
    if (s < 0 || w < 0 || s + w > 1) continue;
    hits.push(p[axis] + s * (q[axis] - p[axis]) + w * (r[axis] - p[axis]));
  }
  return hits.sort((m, n) => m - n);
};
console.log(JSON.stringify({ seconds, cpu, triangles, volume, soundings: (job.lines ?? []).map(sound) }));
