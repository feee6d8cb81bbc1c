// The page of one rule: what it means, measures and wants, where that comes from, and what this job changed.
#pragma once

#include <QScrollArea>

#include <array>
#include <optional>

#include "core/drawing/theme.h"
#include "core/model/job.h"
#include "core/rules/rule_book.h"
#include "core/rules/waiting.h"

class QVBoxLayout;

namespace sillwright {

class RulePage : public QScrollArea {
  Q_OBJECT

public:
  explicit RulePage(QWidget* parent = nullptr);

  void show(const Job& job, RuleId id, const std::array<int, 3>& found);
  void setTheme(ThemeName theme);
  // All its words, a line each: for tests and for copying.
  QString words() const;

Q_SIGNALS:
  void changeLimitWanted(const QString& limit);
  void restoreLimitWanted(const QString& limit);
  void changeCountsWanted(const QString& rule);
  void restoreCountsWanted(const QString& rule);
  void showWanted(PieceRef piece); // that lacks what the rule waits for

private:
  void build();
  void addWords(const QString& words, double size, bool bold = false, bool second = false);
  void addLimit(const LimitRow& row);
  void addCounts(const RuleRow& row);
  void addWaiting(const Waiting& waiting);

  Job job_; // as it was when the page was made; only limits and units are read
  std::optional<RuleId> id_;
  std::array<int, 3> found_{};
  std::vector<Waiting> waits_;
  ThemeName theme_ = ThemeName::Light;
  QVBoxLayout* column_ = nullptr;
};

} // namespace sillwright
