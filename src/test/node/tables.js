// Checks CSV files against the table schemas of a data package, by a validator that is not ours.
//
//   node tables.js DATAPACKAGE.json FOLDER
//
// Every resource whose file is in the folder is checked: its schema by itself, then the file's headings and cells. Columns that may
// be absent may be absent. Prints what was checked, and a line for each fault; ends with status 1 when there is one.
// Where the modules are is said by NODE_PATH: the names and versions stand in package.json and package-lock.json beside this file.
'use strict'
const fs = require('fs')
const path = require('path')
const { Schema, Table } = require('tableschema')

const MOST_SAID = 20

async function check(resource, file) {
  const faults = []
  const whole = await Schema.load(resource.schema)
  for (const fault of whole.errors) faults.push(`${resource.path}: schema: ${fault.message}`)
  if (faults.length > 0) return faults
  const text = fs.readFileSync(file, 'utf8')
  const heading = text.slice(0, text.search(/\r|\n/)).replace(/^\uFEFF/, '').split(',')
  const known = resource.schema.fields.map((field) => field.name)
  const others = heading.filter((name) => !known.includes(name))
  const most = resource.schema.otherFields ? resource.schema.otherFields.atMost : 0
  if (others.length > most) others.forEach((name) => faults.push(`${resource.path}: unknown column ${name}`))
  const there = heading.filter((name) => known.includes(name))
  for (const field of resource.schema.fields) {
    const mayBeAbsent = field.description.includes('column may be absent') || field.name === 'simulated'
    if (!there.includes(field.name) && !mayBeAbsent) faults.push(`${resource.path}: lacks column ${field.name}`)
  }
  if (faults.length > 0) return faults
  const fields = heading.map((name) => resource.schema.fields.find((field) => field.name === name) || { name, type: 'string' })
  // The delimiter is said: else it would be guessed.
  const table = await Table.load(file, { schema: { ...resource.schema, fields }, delimiter: ',' })
  const rows = await table.read({ forceCast: true })
  for (const row of rows) {
    if (!(row instanceof Error)) continue
    const messages = row.errors && row.errors.length > 0 ? row.errors.map((one) => one.message) : [row.message]
    faults.push(`${resource.path}: row ${row.rowNumber}: ${messages.join('; ')}`)
  }
  console.log(`checked ${resource.path}: ${rows.length} rows`)
  return faults
}

async function main(descriptor, folder) {
  const resources = JSON.parse(fs.readFileSync(descriptor, 'utf8')).resources
  let faults = []
  let files = 0
  for (const resource of resources) {
    const file = path.join(folder, resource.path)
    if (!fs.existsSync(file)) continue
    files++
    faults = faults.concat(await check(resource, file))
  }
  faults.slice(0, MOST_SAID).forEach((fault) => console.log(`FAULT ${fault}`))
  console.log(`${files} files, ${faults.length} faults`)
  process.exitCode = faults.length === 0 && files > 0 ? 0 : 1
}

main(process.argv[2], process.argv[3]).catch((failure) => {
  console.log(`FAULT ${failure.stack}`)
  process.exitCode = 1
})
