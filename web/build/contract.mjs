/**
 * Make the front end's types of the core's JSON: an OpenAPI document on standard input, TypeScript
 * on standard output. `npm run contract` writes src/contract/generated.ts.
 */
import openapiTS, { astToString } from "openapi-typescript";
import { text } from "node:stream/consumers";

const HEAD = "/** Made by `npm run contract` from the API's schemas: change those, not this. */\n";

const described = JSON.parse(await text(process.stdin));
const types = await openapiTS(described, { alphabetize: true, arrayLength: true, exportType: true });
process.stdout.write(HEAD + astToString(types));
