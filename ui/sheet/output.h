// Pages as files. The bytes depend on the pages and the date alone.
#pragma once

#include <QByteArray>
#include <string>
#include <vector>

#include "core/base/result.h"
#include "ui/sheet/pages.h"

namespace sillwright {

struct Document {
  std::string title;
  std::string subject;
  std::string date; // YYYY-MM-DD, the document's creation date
};

// Needs a QGuiApplication for its fonts. Vector, fonts embedded, text searchable.
QByteArray toPdf(const std::vector<Page>& pages, const Document& document);

// One file, atomically; an existing one stays where writing fails.
Result<Done> writePdf(const std::vector<Page>& pages, const Document& document, const std::string& path);
// A file a page, NAME-1.svg …, into a folder that is made where missing. Returns the files.
Result<std::vector<std::string>> writeSvg(const std::vector<Page>& pages, const std::string& folder,
                                          const std::string& name);

} // namespace sillwright
