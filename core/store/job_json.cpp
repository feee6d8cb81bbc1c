#include "core/store/job_json.h"

#include "core/store/field_reader.h"
#include "core/store/field_writer.h"
#include "core/store/migrations.h"

namespace sillwright {
namespace {

Result<int> formatOf(const JsonTree& tree) {
  TreeReader reader(tree);
  const FilePlace whole;
  int format = 0;
  if (reader.is(JsonKind::Object, 0, whole))
    FieldReader(reader, 0, whole)("format", format);
  if (reader.problem())
    return *reader.problem();
  return format;
}

Result<Job> readCurrent(const JsonTree& tree) {
  TreeReader reader(tree);
  const FilePlace whole;
  FieldReader fields(reader, 0, whole);
  int format = 0;
  Job job;
  fields("format", format);
  describe(fields, job);
  if (reader.problem())
    return *reader.problem();
  if (auto problem = checkJob(job))
    return *problem;
  return job;
}

} // namespace

Result<Job> readJob(std::string_view utf8) {
  const auto tree = parseJson(utf8);
  if (!tree)
    return tree.problem();
  const auto format = formatOf(*tree);
  if (!format)
    return format.problem();
  if (*format == currentFormat)
    return readCurrent(*tree);
  const auto text = migrated(std::string(utf8), *format, migrations());
  return text ? readJob(*text) : Result<Job>(text.problem());
}

std::string writeJob(const Job& job) {
  std::string out;
  TextWriter writer(out);
  writer.raw("{");
  writer.indent(1);
  FieldWriter fields(writer, true);
  fields("format", currentFormat);
  describe(fields, job);
  writer.indent(-1);
  writer.newLine();
  writer.raw("}\n");
  return out;
}

} // namespace sillwright
