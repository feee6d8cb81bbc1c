#include "ui/sheet/sheet_text.h"

namespace sillwright::sheet {

double head(Drawing& page, Point2 at, std::string_view english, std::string_view spanish, double size) {
  page.text(at, english, Ink::Text, bold(size));
  const double right = at.x + textWidth(english, size);
  if (spanish.empty())
    return right;
  const double second = size - 1;
  page.text({right + size * 0.7, at.y}, spanish, Ink::Text, italic(second));
  return right + size * 0.7 + textWidth(spanish, second);
}

double paragraph(Drawing& page, Point2 at, std::string_view text, const TextStyle& style, double width, double lead) {
  for (const std::string& line : wrapped(text, style.size, width)) {
    page.text(at, line, Ink::Text, style);
    at.y += style.size * lead;
  }
  return at.y;
}

} // namespace sillwright::sheet
