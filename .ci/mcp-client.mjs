// Calls each tool as a chat host would: one right call, one wrong one that must come back as text to correct it by.
import { Client } from "@modelcontextprotocol/sdk/client/index.js";
import { StreamableHTTPClientTransport } from "@modelcontextprotocol/sdk/client/streamableHttp.js";

const client = new Client({ name: "check", version: "1" });
await client.connect(new StreamableHTTPClientTransport(new URL(process.argv[2])));
const { tools } = await client.listTools();
const advice = await client.callTool({ name: "advise", arguments: { vehicle: { fuel: "gasoline" }, complaint: "It squeals when I brake" } });
if (advice.isError || !advice.structuredContent.steps.length) throw new Error("no advice");
const wrong = await client.callTool({ name: "advise", arguments: { vehicle: { modelYear: 1200 } } });
if (!wrong.isError || !wrong.content[0].text.startsWith("/vehicle/modelYear")) throw new Error("not correctable");
console.log(`${tools.length} tools; first step: ${advice.structuredContent.steps[0].title}; wrong arguments: ${wrong.content[0].text}`);
await client.close();
