// node peer.mjs NAME FOLDER REQUESTS: checks that the peer finds what the service finds, then prints its CPU time per request, µs.
import { readFileSync } from 'node:fs';

const [name, folder, most] = process.argv.slice(2);
const rules = JSON.parse(readFileSync(`${folder}/rules.json`, 'utf8'));
const requests = JSON.parse(readFileSync(`${folder}/requests.json`, 'utf8')).slice(0, Number(most));
const operators = { atLeast: 'greaterThanInclusive', below: 'lessThan', above: 'greaterThan', atMost: 'lessThanInclusive' };
const signs = { atLeast: '>=', below: '<', above: '>', atMost: '<=' };

async function jsonRulesEngine() {
  const { Engine } = await import('json-rules-engine');
  const engine = new Engine([], { allowUndefinedFacts: true });
  const has = (of, key) => ({ fact: of, operator: 'contains', value: key });
  const lacks = (of, key) => ({ fact: of, operator: 'doesNotContain', value: key });
  const condition = one =>
    one.op === 'in' ? { any: one.words.map(key => has(one.of, key)) }
    : one.op === 'notIn' ? { all: one.words.map(key => lacks(one.of, key)) }
    : one.op === 'word' ? { fact: one.of, operator: 'in', value: one.words }
    : { fact: one.of, operator: operators[one.op], value: one.bound };
  for (const rule of rules)
    engine.addRule({ conditions: { all: rule.all.map(any => any.length === 1 ? condition(any[0]) : { any: any.map(condition) }) }, event: { type: rule.name } });
  return { facts: one => ({ ...one.sets, ...one.words, ...one.numbers }), run: async facts => (await engine.run(facts)).events.map(event => event.type) };
}

async function zenEngine() {
  const { ZenEngine } = await import('@gorules/zen-engine');
  const text = JSON.stringify;
  const test = one =>
    one.op === 'in' ? one.words.map(key => `${one.of}[${text(key)}] == true`).join(' or ')
    : one.op === 'notIn' ? one.words.map(key => `${one.of}[${text(key)}] != true`).join(' and ')
    : one.op === 'word' ? `words[${text(one.of)}] in ${text(one.words)}`
    : `(numbers[${text(one.of)}] ?? ${one.op === 'atMost' || one.op === 'below' ? 1e12 : -1e12}) ${signs[one.op]} ${one.bound}`;
  const expression = rule => rule.all.map(any => `(${any.map(one => `(${test(one)})`).join(' or ')})`).join(' and ') || 'true';
  const table = {
    nodes: [
      { id: 'in', name: 'in', type: 'inputNode', position: { x: 0, y: 0 } },
      { id: 'out', name: 'out', type: 'outputNode', position: { x: 0, y: 0 } },
      { id: 'table', name: 'table', type: 'decisionTableNode', position: { x: 0, y: 0 }, content: {
        hitPolicy: 'collect', inputs: [{ id: 'when', name: 'when', type: 'expression' }], outputs: [{ id: 'rule', name: 'rule', field: 'rule', type: 'expression' }],
        rules: rules.map((rule, i) => ({ _id: `r${i}`, when: expression(rule), rule: text(rule.name) })) } }],
    edges: [{ id: 'a', sourceId: 'in', targetId: 'table', type: 'edge' }, { id: 'b', sourceId: 'table', targetId: 'out', type: 'edge' }],
  };
  const decision = new ZenEngine().createDecision(Buffer.from(text(table)));
  const flags = keys => Object.fromEntries(keys.map(key => [key, true]));
  return {
    facts: one => ({ ...Object.fromEntries(Object.entries(one.sets).map(([set, keys]) => [set, flags(keys)])), words: one.words, numbers: one.numbers }),
    run: async facts => (await decision.evaluate(facts)).result.map(row => row.rule),
  };
}

const peer = await (name === 'json-rules-engine' ? jsonRulesEngine() : zenEngine());
const facts = requests.map(peer.facts);
for (let i = 0; i < requests.length; i++) {
  const found = [...new Set(await peer.run(facts[i]))].sort(), expected = [...requests[i].expected].sort();
  if (JSON.stringify(found) !== JSON.stringify(expected)) {
    const extra = found.filter(rule => !expected.includes(rule)), missing = expected.filter(rule => !found.includes(rule));
    console.error(`request ${i} differs: ${extra.length} more, such as ${extra[0]}; ${missing.length} missing, such as ${missing[0]}`);
    process.exit(1);
  }
}

const rounds = [];
for (let round = 0; round < 5; round++) {
  const start = process.cpuUsage();
  for (const one of facts)
    await peer.run(one);
  const used = process.cpuUsage(start);
  rounds.push((used.user + used.system) / facts.length);
}
console.log(rounds.sort((a, b) => a - b)[2]);
