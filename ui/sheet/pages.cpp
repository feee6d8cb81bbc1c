#include "ui/sheet/pages.h"

#include <algorithm>
#include <array>
#include <charconv>

#include "ui/sheet/elevation_pages.h"
#include "ui/sheet/plan_pages.h"
#include "ui/sheet/question_pages.h"
#include "ui/sheet/section_pages.h"
#include "ui/sheet/sheet_frame.h"

namespace sillwright {

const std::vector<Paper>& papers() {
  static const std::vector<Paper> list{{"letter", "Letter 8 1/2 x 11", 11, 8.5},
                                       {"tabloid", "Tabloid 11 x 17", 17, 11},
                                       {"arch-b", "ARCH B 12 x 18", 18, 12},
                                       {"arch-c", "ARCH C 18 x 24", 24, 18},
                                       {"arch-d", "ARCH D 24 x 36", 36, 24},
                                       {"a4", "A4 210 x 297 mm", 297 / 25.4, 210 / 25.4},
                                       {"a3", "A3 297 x 420 mm", 420 / 25.4, 297 / 25.4}};
  return list;
}

std::optional<Paper> paperByKey(std::string_view key) {
  for (const Paper& paper : papers())
    if (paper.key == key)
      return paper;
  return std::nullopt;
}

std::vector<Page> composeSheets(const Job& job, const SheetOptions& options) {
  const sheet::PageFrame frame = sheet::pageFrame(options.paper);
  const auto walls = checkAll(job);
  std::vector<sheet::Draft> drafts;
  if (walls.empty())
    return {};
  const auto wants = [&](PageKind kind) {
    return std::find(options.kinds.begin(), options.kinds.end(), kind) != options.kinds.end();
  };
  if (wants(PageKind::Plan))
    sheet::addPlanPages(drafts, job, walls, frame);
  std::vector<sheet::NotesInput> notes;
  if (wants(PageKind::Elevation))
    for (const auto& wall : walls)
      if (!sheet::nothingToSet(*wall))
        sheet::addElevationPages(drafts, job, *wall, frame, notes);
  sheet::addNotePages(drafts, notes, frame);
  if (wants(PageKind::Section))
    sheet::addSectionPages(drafts, job, walls, frame);
  if (wants(PageKind::Question))
    sheet::addQuestionPages(drafts, job, sheet::questionsOf(job, walls), frame);
  std::vector<Page> pages;
  const int count = static_cast<int>(drafts.size());
  for (int i = 0; i < count; ++i) {
    sheet::Draft& draft = drafts[static_cast<std::size_t>(i)];
    sheet::finishPage(draft, frame, job, options, i + 1, count);
    pages.push_back({std::move(draft.drawing), frame.width, frame.height, draft.title, draft.scale});
  }
  return pages;
}

bool isDate(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-')
    return false;
  const auto number = [text](std::size_t from, std::size_t count) {
    int value = -1;
    const char* end = text.data() + from + count;
    const auto read = std::from_chars(text.data() + from, end, value);
    return read.ec == std::errc{} && read.ptr == end ? value : -1;
  };
  const int year = number(0, 4), month = number(5, 2), day = number(8, 2);
  if (year < 1 || month < 1 || month > 12 || day < 1)
    return false;
  const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
  static constexpr std::array<int, 12> days{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  return day <= days[static_cast<std::size_t>(month - 1)] + (month == 2 && leap ? 1 : 0);
}

} // namespace sillwright
