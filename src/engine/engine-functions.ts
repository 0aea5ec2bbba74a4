import {
  CellError,
  ErrorType,
  FunctionPlugin,
  HyperFormula,
  type FunctionPluginDefinition,
} from 'hyperformula';
import { CraftError, message, sentence, type Message } from '../craft';
import { reportCells } from './between-cells';
import {
  functionNamed,
  functions,
  type Argument,
  isDimension,
  tradeFunctions,
  type Value,
} from '../formulas';
import { own } from './own-functions';
import { packedMessage } from './pack-message';
import { shareParses } from './shared-parses';
import type { Syntax } from './units/syntax';

/*
 * HyperFormula keeps its functions in one register for the whole program. Here it is cleared of everything a
 * formula may not use, and given the trade's functions and four of the engine's own, which no formula can name
 * because the tokenizer does not know them.
 */

/** Texts of error values that are for the sheet and not yet messages. */
export const codes = { nothing: 'nothing', notAllowed: 'not allowed: ' } as const;

/** Where `own.tree` puts the tree: an engine's `context`. */
export interface TreeHolder {
  tree?: Syntax | undefined;
}

type Evaluated = Value | CellError;
/** What a plugin is handed: trees and a state that it only passes on. */
type Ast = Syntax;
type State = object;
interface Call {
  readonly args: Ast[];
}

/** An error value. Of HyperFormula's own errors none has this type. */
function errorValue(text: string): CellError {
  return new CellError(ErrorType.ERROR, text);
}

/** An error value that carries a message, packed. */
function errorOf(shown: Message): CellError {
  return errorValue(packedMessage(shown));
}

const valueMissing = message('missing', 'A value is missing here.');

/** The value of an argument. */
export function evaluated(plugin: FunctionPlugin, ast: Ast, state: State): Evaluated {
  // Only plugins may call it, and ours are made of functions.
  const { interpreter } = plugin as unknown as {
    interpreter: { evaluateAst(ast: Ast, state: State): unknown };
  };
  const value = interpreter.evaluateAst(ast, state);
  if (value instanceof CellError) return value;
  // A per cent is a number that remembers how it is written.
  const raw = typeof value === 'object' && value !== null && 'val' in value ? value.val : value;
  if (typeof raw === 'number' || typeof raw === 'string' || typeof raw === 'boolean') return raw;
  return errorOf(valueMissing);
}

function kindOf(argument: Argument): 'number' | 'string' | 'boolean' {
  if (argument.unit === 'any' || isDimension(argument.unit)) return 'number';
  return argument.unit === 'truth' ? 'boolean' : 'string';
}

const kinds = { number: 'a number', string: 'not a number', boolean: 'yes or no' } as const;

function tradeMethod(name: string) {
  const work = tradeFunctions[name] as (...values: Value[]) => Value;
  const entry = functionNamed(name)!;
  const wanted = entry.arguments.map(kindOf);
  // GAUGE repeats count and length, the others their last argument; of one kind either way.
  const last = wanted.at(-1)!;
  return function (this: FunctionPlugin, call: Call, state: State): Evaluated {
    const values: Value[] = [];
    for (let i = 0; i < call.args.length; i++) {
      const value = evaluated(this, call.args[i]!, state);
      if (value instanceof CellError) return value;
      const kind = wanted[i] ?? last;
      if (typeof value !== kind) {
        const label = (entry.arguments[i] ?? entry.arguments.at(-1)!).label;
        return errorOf(
          message('wrong-kind', 'The argument "{label}" of {name} has to be {kind}.', {
            label,
            name,
            kind: kinds[kind],
          }),
        );
      }
      values.push(value);
    }
    try {
      return work(...values);
    } catch (error) {
      if (error instanceof CraftError) return errorOf(error);
      const why = error instanceof Error ? error.message : `${name} does not work with these values.`;
      return errorOf(sentence(why));
    }
  };
}

const ownMethods: Record<string, (this: FunctionPlugin, call: Call, state: State) => Evaluated> = {
  [own.nothing]: () => errorValue(codes.nothing),
  [own.checked](call, state) {
    const value = evaluated(this, call.args[0]!, state);
    if (typeof value !== 'number') return value;
    const [whole, above, least] = call.args.slice(1).map((limit) => evaluated(this, limit, state));
    const near = Math.round(value);
    const isWhole = Math.abs(value - near) <= 1e-9 * Math.max(1, Math.abs(value));
    const result = whole === 1 && isWhole ? near : value;
    const allowed =
      (whole !== 1 || isWhole) &&
      (typeof above !== 'number' || result > above) &&
      (typeof least !== 'number' || result >= least);
    return allowed ? result : errorValue(`${codes.notAllowed}${value}`);
  },
  [own.tree](call) {
    (this as unknown as { config: { context: TreeHolder } }).config.context.tree = call.args[0]!;
    return true;
  },
  [own.spelt](call) {
    const [text] = call.args as unknown as [{ value: string }];
    return String.fromCodePoint(...text.value.split(' ').map(Number));
  },
};
/** A plugin with these functions under their own names. */
export function pluginOf(
  methods: Readonly<Record<string, (this: FunctionPlugin, call: Call, state: State) => Evaluated>>,
): FunctionPluginDefinition {
  class Plugin extends FunctionPlugin {}
  const definitions = Object.keys(methods).map((name) => [name, { method: name }] as const);
  Object.assign(Plugin, { implementedFunctions: Object.fromEntries(definitions) });
  for (const [name, method] of Object.entries(methods)) {
    Object.defineProperty(Plugin.prototype, name, { value: method });
  }
  return Plugin as unknown as FunctionPluginDefinition;
}

/** Puts functions into the register, under the names formulas use. */
export function register(plugin: FunctionPluginDefinition): void {
  const names = Object.keys(plugin.implementedFunctions);
  HyperFormula.registerFunctionPlugin(plugin, {
    enGB: Object.fromEntries(names.map((name) => [name, name])),
  });
}

const standard = functions
  .filter(({ name }) => !(name in tradeFunctions))
  .flatMap(({ name }) => {
    const plugin = HyperFormula.getFunctionPlugin(name);
    return plugin ? [[name, plugin] as const] : [];
  });
HyperFormula.unregisterAllFunctions();
for (const [name, plugin] of standard) HyperFormula.registerFunction(name, plugin);
register(pluginOf(Object.fromEntries(Object.keys(tradeFunctions).map((name) => [name, tradeMethod(name)]))));
register(pluginOf(ownMethods));

/** How every engine is set. */
export const engineSettings = {
  licenseKey: 'gpl-v3',
  functionArgSeparator: ';',
  decimalSeparator: '.',
  // The default of 10 loses digits that the derivatives of a result need.
  precisionRounding: 14,
  smartRounding: true,
  // Rows are appended and never used again.
  maxRows: 1_000_000,
  // The notebook has its own history.
  undoLimit: 0,
} as const;

/** Whether engines say when they come to the next cell. */
export const cellsAreReported = reportCells(engineSettings);

/** How many formulas have been read in this thread. */
export const formulasRead = shareParses(engineSettings);
