// Calls each tool as a chat host would: one right call, whose structured content the client of the SDK holds against the tool's output schema, and
// one wrong call that must come back as text by which a model can correct it.
import { Client } from "@modelcontextprotocol/sdk/client/index.js";
import { StreamableHTTPClientTransport } from "@modelcontextprotocol/sdk/client/streamableHttp.js";

const vehicle = { modelYear: 2014, fuel: "gasoline", odometer: { value: 120000, unit: "km" } };
const pads = { check: "brake-pad-thickness", position: "front-left", value: 2, unit: "mm" };
const reading = (value, on, km) => ({ value, unit: "mm", on, odometer: { value: km, unit: "km" } });
const projection = { vehicle, check: pads.check, position: pads.position, measurements: [reading(8, "2024-01-10", 80000), reading(6, "2025-01-10", 100000), reading(4, "2026-01-10", 120000)] };
const calls = {
  advise: [{ vehicle, complaint: "It squeals when I brake", troubleCodes: ["P0171"], freezeFrame: { engineSpeed: { value: 720, unit: "rpm" } } }, { vehicle: { modelYear: 1200 } }, "/vehicle/modelYear"],
  read_complaint: [{ text: "it acts up" }, { text: 3 }, "/text"],
  inspect: [{ vehicle, workshop: { minutes: 45 } }, { vehicle, workshop: { minutes: 0 } }, "/workshop/minutes"],
  judge: [{ vehicle, findings: [pads] }, { vehicle, findings: [{ ...pads, unit: "V" }] }, "/findings/0/unit"],
  due: [{ vehicle }, { vehicle, services: [{ item: "no-such-service" }] }, "/services/0/item"],
  project_wear: [projection, { ...projection, measurements: [] }, "/measurements"],
  why_not: [{ vehicle, complaint: "It squeals when I brake", fault: "wheel-bearing-worn" }, { vehicle, fault: "no-such-fault" }, "/fault"],
  search_catalogue: [{ words: "brake pads" }, { words: "brake pads", limit: -1 }, "/limit"],
};

const client = new Client({ name: "check", version: "1" });
await client.connect(new StreamableHTTPClientTransport(new URL(process.argv[2])));
const { tools } = await client.listTools();
for (const { name, outputSchema } of tools) {
  const [right, wrong, pointer] = calls[name] ?? (() => { throw new Error(`${name} is not tried`); })();
  const answer = await client.callTool({ name, arguments: right });
  if (!outputSchema || answer.isError || !answer.structuredContent) throw new Error(`${name}: ${answer.content?.[0]?.text ?? "no output schema"}`);
  const refused = await client.callTool({ name, arguments: wrong });
  const text = refused.content[0].text;
  if (!refused.isError || !text.startsWith(pointer)) throw new Error(`${name} is not correctable: ${text}`);
  console.log(`${name}: ${Object.keys(answer.structuredContent).length} members; wrong arguments: ${text.split("\n")[0]}`);
}
await client.close();
