#include "ui/panels/job_refit_rows.h"

#include <algorithm>

#include "core/refit/refit_words.h"

namespace sillwright {

namespace {

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

QString conflictWords(const std::vector<NoLayout>& conflicts) {
  if (conflicts.size() > 1)
    return JobRefitRowsModel::tr("no layout exists, in %1 places").arg(conflicts.size());
  const std::size_t count = conflicts.front().requirements.size();
  return count == 1 ? JobRefitRowsModel::tr("no layout exists: 1 requirement cannot be met")
                    : JobRefitRowsModel::tr("no layout exists: %1 requirements").arg(count);
}

std::size_t tickedOf(const JobRefitRow& row) {
  return static_cast<std::size_t>(
      std::count_if(row.changes.begin(), row.changes.end(), [](const RefitRow& change) { return change.ticked; }));
}

// What may move where one place has no layout.
QString elsewhereWords(std::size_t count) {
  return count == 0   ? QString()
         : count == 1 ? JobRefitRowsModel::tr("elsewhere on it 1 piece would move")
                      : JobRefitRowsModel::tr("elsewhere on it %1 pieces would move").arg(count);
}

// Of the proposal only what would be taken over.
QString movedWords(const JobRefitRow& row, LengthStyle style) {
  Proposal taken = *row.proposal();
  taken.changes.clear();
  for (const RefitRow& change : row.changes)
    if (change.ticked)
      taken.changes.push_back(change.change);
  const std::string words = movesWords(taken, style);
  return words.empty() ? JobRefitRowsModel::tr("nothing to take over") : text(words);
}

RefitLine wallLine(const JobRefitRow& row, LengthStyle style) {
  RefitLine line;
  line.kind = RefitLine::Kind::Wall;
  line.tickable = row.mayBeTicked();
  line.ticked = row.ticked;
  line.faint = row.now != JobRefitRow::Now::AsAsked || (row.proposal() && !row.ticked);
  QString words;
  if (row.now == JobRefitRow::Now::Changed) {
    words = JobRefitRowsModel::tr("out of date");
    line.second = JobRefitRowsModel::tr("it has changed since: go to it, and it is laid out again");
  } else if (row.now == JobRefitRow::Now::Taken) {
    words = JobRefitRowsModel::tr("accepted");
  } else if (const Problem* problem = row.problem()) {
    words = text(problem->message);
  } else if (row.proposal()) {
    words = movedWords(row, style);
    line.second = text(targetsWords(*row.proposal(), style));
  } else {
    words = conflictWords(row.found.conflicts());
    line.second = elsewhereWords(tickedOf(row));
  }
  line.words = JobRefitRowsModel::tr("%1: %2").arg(text(row.wall->layout.wall->mark), words);
  return line;
}

} // namespace

std::vector<RefitLine> JobRefitRowsModel::linesNow() const {
  std::vector<RefitLine> lines;
  for (const JobRefitRow& row : bench_.jobRefitDesk().rows()) {
    lines.push_back(wallLine(row, bench_.job().units));
    lines.back().at = lines.size() - 1;
  }
  return lines;
}

void JobRefitRowsModel::tick(std::size_t at, bool ticked) {
  bench_.jobRefitDesk().tick(at, ticked);
}

} // namespace sillwright
