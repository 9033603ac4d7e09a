// The parts on the stage: meshes by their marks, looks, and where each body stands.
import * as THREE from "three";
import { fetchPoses } from "./pose.js";

const ink = { light: 0x22282b, dark: 0x0c0e0f };

// Cut open, a solid shows its inside: drawn flat and hatched at 45 degrees, as ISO 128-50 has cut faces, it looks filled.
function hatched(shader, cut) {
  shader.uniforms.isCut = cut;
  shader.fragmentShader = "uniform float isCut;\n" + shader.fragmentShader.replace(
    "#include <dithering_fragment>",
    `#include <dithering_fragment>
    if (isCut > 0.5 && !gl_FrontFacing) {
      float line = step(mod(gl_FragCoord.x + gl_FragCoord.y, 9.0), 1.3);
      gl_FragColor = vec4(mix(mix(diffuse, vec3(1.0), 0.35), vec3(0.13, 0.16, 0.17), line), opacity);
    }`,
  );
}

export class Solids {
  constructor(root, plain) {
    this.root = root;
    this.plain = plain;
    this.meshes = new Map();
    this.parts = [];
    this.bodies = [];
    this.poses = null;
    this.planes = [];
    this.cut = { value: 0 };
    this.q = new THREE.Quaternion();
    this.q2 = new THREE.Quaternion();
  }

  async load(url) {
    const answer = await fetch(url, { method: "POST", body: [...this.meshes.keys()].join(".") });
    if (!answer.ok) return null;
    const buffer = await answer.arrayBuffer();
    const [length] = new Uint32Array(buffer, 0, 1);
    const scene = JSON.parse(new TextDecoder().decode(new Uint8Array(buffer, 4, length)));
    let at = 4 + length;
    for (const mark of scene.meshes) {
      const [corners, indices] = new Uint32Array(buffer, at, 2);
      const geometry = new THREE.BufferGeometry();
      geometry.setAttribute("position", new THREE.BufferAttribute(new Float32Array(buffer, at + 8, 3 * corners), 3));
      geometry.setAttribute("normal", new THREE.BufferAttribute(new Float32Array(buffer, at + 8 + 12 * corners, 3 * corners), 3));
      geometry.setIndex(new THREE.BufferAttribute(new Uint32Array(buffer, at + 8 + 24 * corners, indices), 1));
      this.meshes.set(mark, { geometry, edges: new THREE.EdgesGeometry(geometry, 28) });
      at += 8 + 24 * corners + 4 * indices;
    }
    this.place(scene);
    return scene;
  }

  // Parts that stayed keep their objects; the others are made anew.
  place(scene) {
    while (this.bodies.length < scene.bodies) {
      const group = new THREE.Group();
      this.bodies.push(group);
      this.root.add(group);
    }
    const before = new Map(this.parts.map((p) => [`${p.userData.name}|${p.userData.mark}|${p.userData.body}`, p]));
    this.parts = scene.parts.map((p, i) => {
      const key = `${p.name}|${p.mark}|${p.body}`;
      let mesh = before.get(key);
      before.delete(key);
      if (!mesh) {
        const { geometry, edges } = this.meshes.get(p.mark);
        const look = { color: p.colour, clippingPlanes: this.planes, side: THREE.DoubleSide };
        const material = this.plain ? new THREE.MeshLambertMaterial(look) : new THREE.MeshStandardMaterial({ ...look, metalness: p.metal * 0.72, roughness: p.metal ? 0.42 : 0.82 });
        material.onBeforeCompile = (shader) => hatched(shader, this.cut);
        mesh = new THREE.Mesh(geometry, material);
        mesh.castShadow = mesh.receiveShadow = true;
        mesh.add(new THREE.LineSegments(edges, new THREE.LineBasicMaterial({ color: ink.light, transparent: true, opacity: 0.32, clippingPlanes: this.planes })));
        this.bodies[p.body].add(mesh);
      }
      mesh.userData = { ...p, number: i };
      return mesh;
    });
    for (const gone of before.values()) {
      gone.removeFromParent();
      gone.material.dispose();
      gone.children[0].material.dispose();
    }
    const marks = new Set(scene.parts.map((p) => p.mark));
    for (const [mark, made] of this.meshes) {
      if (!marks.has(mark)) {
        made.geometry.dispose();
        made.edges.dispose();
        this.meshes.delete(mark);
      }
    }
  }

  async loadPoses(url) {
    this.poses = (await fetchPoses(url)) ?? this.poses;
  }

  // Between two frames a body is read on the straight way from one to the other.
  stand(share) {
    const { poses } = this;
    if (!poses) return;
    const at = share * poses.frames;
    const i = Math.floor(at) % poses.frames;
    const j = (i + 1) % poses.frames;
    const t = at - Math.floor(at);
    const v = poses.values;
    for (let b = 0; b < Math.min(this.bodies.length, poses.bodies); b++) {
      const a = 7 * (i * poses.bodies + b);
      const z = 7 * (j * poses.bodies + b);
      const body = this.bodies[b];
      body.position.set(v[a] + t * (v[z] - v[a]), v[a + 1] + t * (v[z + 1] - v[a + 1]), v[a + 2] + t * (v[z + 2] - v[a + 2]));
      body.quaternion.copy(this.q.fromArray(v, a + 3).slerp(this.q2.fromArray(v, z + 3), t));
    }
  }

  show({ boards, only, picked, member }, marked) {
    for (const mesh of this.parts) {
      const { number, colour } = mesh.userData;
      const isCase = mesh.userData.case;
      const line = mesh.children[0].material;
      mesh.visible = (!only || only.includes(number)) && !(isCase && boards === "hidden" && !only);
      const clear = isCase && boards === "clear";
      if (mesh.material.transparent !== clear) {
        mesh.material.transparent = clear;
        mesh.material.needsUpdate = true;
      }
      mesh.material.opacity = clear ? 0.09 : 1;
      mesh.material.depthWrite = !clear;
      mesh.castShadow = !isCase || boards === "solid";
      mesh.userData.through = clear;
      mesh.material.color.set(colour);
      const lit = marked.includes(number) ? 0xb0302a : number === picked || member.includes(number) ? 0x3f7d6e : 0;
      mesh.material.emissive.set(lit);
      mesh.material.emissiveIntensity = !lit ? 0 : number === picked || marked.includes(number) ? 0.55 : 0.22;
      line.opacity = clear ? 0.4 : 0.32;
    }
  }
}
