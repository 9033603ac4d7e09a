// The stage: draws the arrays it is sent and turns them with the crank. Millimetres; x right, y up, z to the viewer.
import * as THREE from "three";
import { OrbitControls } from "three/addons/controls/OrbitControls.js";
import { RoomEnvironment } from "three/addons/environments/RoomEnvironment.js";
import { crank, onCrank, run, setPerformance, turnTo } from "./crank.js";
import { latest } from "./latest.js";
import { Solids } from "./solids.js";
import { note } from "./measure.js";

const ways = { quarter: [0.62, 0.38, 1], front: [0, 0.06, 1], side: [1, 0.06, 0], back: [0, 0.06, -1], top: [0, 1, 0.001] };
const axes = { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] };

// Where the processor draws instead of a graphics card, shadows, mirrors and smoothed edges are left out.
function isSlow() {
  const gl = document.createElement("canvas").getContext("webgl2");
  const info = gl?.getExtension("WEBGL_debug_renderer_info");
  const name = info ? gl.getParameter(info.UNMASKED_RENDERER_WEBGL) : "";
  gl?.getExtension("WEBGL_lose_context")?.loseContext();
  return /swiftshader|llvmpipe|software/i.test(name);
}

export function createStage(place, page) {
  let renderer;
  const plain = isSlow();
  try {
    renderer = new THREE.WebGLRenderer({ antialias: !plain, alpha: true });
  } catch {
    place.insertAdjacentHTML("beforeend", "<p class='wait'>This browser can't draw in three dimensions (no WebGL). Chart, verdict and text work all the same.</p>");
    const nothing = () => {};
    return { performance: setPerformance, scene: nothing, poses: nothing, show: nothing, look: nothing, jump: (deg) => deg !== null && turnTo(deg), stop: nothing };
  }
  renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
  renderer.localClippingEnabled = true;
  renderer.shadowMap.enabled = !plain;
  renderer.toneMapping = THREE.ACESFilmicToneMapping;
  renderer.toneMappingExposure = 1.05;
  place.append(renderer.domElement);

  window.benchRenderer = () => (plain ? "drawn by the processor" : "drawn by a graphics card");
  const scene = new THREE.Scene();
  if (!plain) {
    const pmrem = new THREE.PMREMGenerator(renderer);
    scene.environment = pmrem.fromScene(new RoomEnvironment(), 0.04).texture;
    scene.environmentIntensity = 0.5;
  }
  scene.add(new THREE.HemisphereLight(0xfff6e4, 0x6b5a45, plain ? 1.9 : 0.9));
  const sun = new THREE.DirectionalLight(0xfff1d8, 2.1);
  sun.castShadow = true;
  sun.shadow.mapSize.set(1024, 1024);
  sun.shadow.bias = -0.0006;
  sun.shadow.normalBias = 0.6;
  scene.add(sun, sun.target);
  const camera = new THREE.PerspectiveCamera(28, 1, 10, 5000);
  const controls = new OrbitControls(camera, renderer.domElement);
  controls.enableDamping = !matchMedia("(prefers-reduced-motion: reduce)").matches;
  controls.dampingFactor = 0.15;
  const table = new THREE.Mesh(new THREE.CircleGeometry(1, 72), new THREE.ShadowMaterial({ opacity: 0.22 }));
  table.rotation.x = -Math.PI / 2;
  table.receiveShadow = true;
  scene.add(table);
  const solids = new Solids(scene, plain);
  const spot = new THREE.Mesh(new THREE.SphereGeometry(1, 24, 16), new THREE.MeshBasicMaterial({ color: 0xb0302a, transparent: true, opacity: 0.75, depthTest: false }));
  spot.visible = false;
  spot.renderOrder = 3;
  scene.add(spot);
  const path = new THREE.LineLoop(new THREE.BufferGeometry(), new THREE.LineBasicMaterial({ color: 0xb0302a, depthTest: false }));
  path.visible = false;
  path.renderOrder = 2;
  scene.add(path);

  let state = { boards: "clear", only: null, section: "", cut: 0, picked: -1, member: [], path: null };
  let marked = [];
  let info = null;
  let size = { middle: new THREE.Vector3(0, 130, 0), reach: 200, floor: 0 };
  let dirty = true;
  let rest = 0;
  const alive = new AbortController();
  const on = (target, kind, f, more) => target.addEventListener(kind, f, { signal: alive.signal, ...more });

  const dress = () => {
    solids.show(state, marked);
    solids.planes.length = 0;
    solids.cut.value = state.section ? 1 : 0;
    if (state.section) solids.planes.push(new THREE.Plane(new THREE.Vector3(...axes[state.section]).negate(), state.cut));
    path.visible = !!state.path;
    if (state.path) path.geometry.setAttribute("position", new THREE.BufferAttribute(new Float32Array(state.path), 3));
    dirty = true;
  };

  const measure = () => {
    solids.stand(crank.deg / (360 * crank.turns));
    scene.updateMatrixWorld(true);
    const box = new THREE.Box3();
    for (const p of solids.parts) box.expandByObject(p);
    if (box.isEmpty()) return;
    box.getCenter(size.middle);
    size.reach = box.getSize(new THREE.Vector3()).length() / 2;
    size.floor = box.min.y;
    table.scale.setScalar(size.reach * 2.2);
    table.position.set(size.middle.x, size.floor - 0.5, size.middle.z);
    sun.position.set(size.middle.x + size.reach * 0.9, size.middle.y + size.reach * 1.9, size.middle.z + size.reach * 1.3);
    sun.target.position.copy(size.middle);
    Object.assign(sun.shadow.camera, { left: -size.reach, right: size.reach, top: size.reach, bottom: -size.reach, near: 1, far: size.reach * 5 });
    sun.shadow.camera.updateProjectionMatrix();
  };

  const look = (name) => {
    const far = size.reach / Math.sin((camera.fov / 2) * (Math.PI / 180)) / Math.min(1, camera.aspect);
    camera.position.copy(size.middle).add(new THREE.Vector3(...ways[name]).normalize().multiplyScalar(far * 0.93));
    // The tools take room at the top: the piece stands a little lower than the middle.
    controls.target.copy(size.middle);
    controls.target.y += size.reach * 0.05;
    camera.position.y += size.reach * 0.05;
    controls.update();
    dirty = true;
  };

  const fit = () => {
    const { width, height } = place.getBoundingClientRect();
    if (!width || !height) return;
    renderer.setSize(width, height);
    camera.aspect = width / height;
    camera.updateProjectionMatrix();
    dirty = true;
  };
  const sizes = new ResizeObserver(fit);
  sizes.observe(place);
  fit();

  // The handle is turned by dragging whatever moves with the crank; elsewhere a drag looks round, a click picks.
  const ray = new THREE.Raycaster();
  const point = new THREE.Vector2();
  const aim = (e) => {
    const box = renderer.domElement.getBoundingClientRect();
    point.set(((e.clientX - box.left) / box.width) * 2 - 1, 1 - ((e.clientY - box.top) / box.height) * 2);
    ray.setFromCamera(point, camera);
    const cut = solids.planes[0];
    return ray.intersectObjects(solids.parts.filter((p) => p.visible && !p.userData.through), false).find((h) => !cut || cut.distanceToPoint(h.point) >= 0);
  };
  const bearing = (e) => {
    const box = renderer.domElement.getBoundingClientRect();
    const middle = new THREE.Vector3(...info.crank.through).project(camera);
    const x = e.clientX - box.left - ((middle.x + 1) / 2) * box.width;
    const y = box.top + ((1 - middle.y) / 2) * box.height - e.clientY;
    return Math.atan2(y, x);
  };
  // Seen with its axis pointing at the viewer the crank turns counter-clockwise; seen on edge, the pointer's height tells.
  const facing = () => new THREE.Vector3(...info.crank.along).dot(camera.position.clone().sub(new THREE.Vector3(...info.crank.through)).normalize());
  let turning = null;
  let pressed = null;
  on(renderer.domElement, "pointerdown", (e) => {
    if (e.button !== 0) return;
    pressed = [e.clientX, e.clientY];
    const hit = aim(e);
    if (info && hit?.object.userData.body === info.crank.body) {
      turning = { id: e.pointerId, at: bearing(e), y: e.clientY };
      controls.enabled = false;
      renderer.domElement.setPointerCapture(e.pointerId);
      run(false);
      place.focus({ preventScroll: true });
    }
  }, { capture: true });
  on(renderer.domElement, "pointermove", (e) => {
    if (turning?.id === e.pointerId) {
      const side = facing();
      const at = bearing(e);
      const by = Math.abs(side) > 0.25 ? Math.sign(side) * Math.atan2(Math.sin(at - turning.at), Math.cos(at - turning.at)) * (180 / Math.PI) : (turning.y - e.clientY) * 0.8;
      turning = { ...turning, at, y: e.clientY };
      turnTo(crank.deg + by);
    } else if (!e.buttons) {
      const hit = aim(e);
      renderer.domElement.style.cursor = hit && info && hit.object.userData.body === info.crank.body ? "grab" : hit ? "pointer" : "";
    }
  });
  on(renderer.domElement, "pointerup", (e) => {
    const still = pressed && Math.hypot(e.clientX - pressed[0], e.clientY - pressed[1]) < 4;
    if (turning) {
      turning = null;
      controls.enabled = true;
    }
    if (still) {
      marked = [];
      spot.visible = false;
      page.invokeMethodAsync("Pick", aim(e)?.object.userData.name ?? null);
    }
    pressed = null;
  });
  on(place, "keydown", (e) => {
    const by = { ArrowRight: 1, ArrowLeft: -1, PageUp: 30, PageDown: -30 }[e.key];
    if (by) turnTo(crank.deg + by * (e.shiftKey ? 5 : 1));
    else if (e.key === "Home") turnTo(0);
    else if (e.key === " ") run();
    else if (e.key === "Escape") page.invokeMethodAsync("Pick", null);
    else return;
    e.preventDefault();
  });
  controls.addEventListener("change", () => (dirty = true));

  const leave = onCrank(() => (dirty = true));
  // Where the processor draws, the rest of the page gets as long as the last picture took before the next is begun.
  let drawn = 0;
  let took = 0;
  let frame = requestAnimationFrame(function draw() {
    frame = requestAnimationFrame(draw);
    controls.update();
    const began = performance.now();
    if (plain && drawn && !took) took = began - drawn;
    if (!dirty || began - drawn < 2 * took) return;
    dirty = false;
    [drawn, took] = [began, 0];
    solids.stand(crank.deg / (360 * crank.turns));
    const scale = camera.position.distanceTo(spot.position) * 0.011;
    spot.scale.setScalar(scale);
    renderer.render(scene, camera);
    note.frame(began);
    if (solids.poses) note.posed(solids.poses.version);
  });

  return {
    performance: setPerformance,
    scene: latest(async (base) => {
      const first = !info;
      const got = await solids.load(`${base}/scene`);
      if (!got) return;
      info = got;
      if (!solids.poses) await solids.loadPoses(`${base}/poses`);
      // While a move is dragged the room that the piece takes is not asked for at every step.
      clearTimeout(rest);
      if (first) {
        measure();
        look("quarter");
      } else rest = setTimeout(measure, 400);
      dress();
      place.dataset.parts = got.parts.length;
    }),
    poses: latest(async (url) => {
      await solids.loadPoses(url);
      dirty = true;
    }),
    show(next) {
      state = { ...state, ...next };
      dress();
    },
    look,
    jump(deg, parts, at) {
      run(false);
      if (deg !== null) turnTo(deg);
      marked = parts;
      spot.visible = !!at;
      if (at) spot.position.set(...at);
      dress();
    },
    stop() {
      alive.abort();
      leave();
      sizes.disconnect();
      cancelAnimationFrame(frame);
      renderer.dispose();
    },
  };
}
