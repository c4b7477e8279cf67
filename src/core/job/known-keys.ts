/** Which keys a group of the job file may have. */
import { jobJsonSchema } from './json-schema';

/** As much of JSON Schema as the definition of a job makes. */
interface Schema {
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, Schema>>;
  readonly properties?: Readonly<Record<string, Schema & { readonly const?: unknown }>>;
  readonly items?: Schema;
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
}

/** The keys that may stand in the group at a path; `root` is the whole file. Empty where no group may stand. */
export function knownKeys(path: readonly PropertyKey[], root: unknown): string[] {
  const whole = jobJsonSchema() as Schema;
  let schemas = groupsOf(whole, whole);
  let value = root;
  for (const key of path) {
    schemas = fitting(schemas, value).flatMap((schema) => {
      const inner = typeof key === 'number' ? schema.items : schema.properties?.[String(key)];
      return inner ? groupsOf(inner, whole) : [];
    });
    value = value !== null && typeof value === 'object' ? (value as Record<PropertyKey, unknown>)[key] : undefined;
  }
  return [...new Set(fitting(schemas, value).flatMap(({ properties }) => Object.keys(properties ?? {})))];
}

/** Branches of unions apart, references followed. */
function groupsOf(schema: Schema, whole: Schema): Schema[] {
  const named = schema.$ref?.replace('#/$defs/', '');
  const found = named === undefined ? schema : whole.$defs?.[named];
  const branches = found?.anyOf ?? found?.oneOf;
  if (branches) return branches.flatMap((branch) => groupsOf(branch, whole));
  return found ? [found] : [];
}

/** Of groups told apart by their kind, those of the value's own. */
function fitting(schemas: readonly Schema[], value: unknown): readonly Schema[] {
  const kind = value !== null && typeof value === 'object' ? (value as { kind?: unknown }).kind : undefined;
  const same = schemas.filter(({ properties }) => kind !== undefined && properties?.['kind']?.const === kind);
  return same.length > 0 ? same : schemas;
}
