// Two rows of the card that only tell: the slot of the piece that is shown, and its slide room.
#pragma once

#include <QString>

#include <memory>

#include "core/drawing/theme.h"
#include "core/gesture/workbench.h"

class QGridLayout;
class QLabel;

namespace sillwright {

class SlotRows {
public:
  // Makes the rows, hidden, from a row of a grid on; those of before are gone with the grid's other widgets.
  void addTo(QGridLayout& grid, int row);
  // Of the one piece, where it is one that has slots; otherwise the rows are hidden. Computed for it alone, and only
  // when its wall or the units changed.
  void show(const Workbench& bench, const std::vector<PieceRef>& pieces);
  void setTheme(ThemeName theme);
  int computed() const { return computed_; } // slots so far: tests watch it

private:
  struct Row {
    QLabel* title = nullptr;
    QLabel* value = nullptr;
    QString words, note;
  };
  void fill(Row& row, const QString& words, const QString& note);
  void paint(const Row& row);

  ThemeName theme_ = ThemeName::Light;
  Row slot_, room_;
  std::shared_ptr<const CheckedWall> wall_; // what is told now
  Id piece_;
  LengthStyle units_ = LengthStyle::FeetInches;
  int computed_ = 0;
};

} // namespace sillwright
