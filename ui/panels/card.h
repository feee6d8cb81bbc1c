// The card of what is selected: every field, editable with the job's length parser; below it slot and slide room, and
// what was found on it. With several pieces, the fields all of them have, set together.
#pragma once

#include <QLabel>
#include <QScrollArea>

#include <map>
#include <vector>

#include "core/drawing/theme.h"
#include "core/edit/fields.h"
#include "core/gesture/workbench.h"
#include "ui/panels/slot_rows.h"

class QGridLayout;
class QVBoxLayout;

namespace sillwright {

class Card : public QScrollArea {
  Q_OBJECT

public:
  explicit Card(Workbench& bench, QWidget* parent = nullptr);

  void follow(const WorkNotice& notice);
  void setTheme(ThemeName theme);
  // "S1, strap"; "3 pieces"; "wall A"
  QString note() const;
  // The editor of a field (QLineEdit, QComboBox or QCheckBox); null where there is none. Its object name is the key.
  QWidget* editorOf(const std::string& key) const;
  // What is said at a field that was not understood; empty where all is well.
  QString errorAt(const std::string& key) const;
  const SlotRows& slotRows() const { return slotRows_; }

Q_SIGNALS:
  void whyWanted(int rule); // a RuleId: of a finding below the fields
  void typeWanted(Id listed); // the type or mark that a field names; may be empty

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  struct Row {
    Field field;
    QWidget* editor = nullptr;
    QLabel* note = nullptr;
    bool refused = false; // what stands in it was not understood: it stays as typed
  };
  std::vector<PieceRef> shownPieces() const;
  std::vector<Field> commonFields() const;
  void showFields();
  void build(const std::vector<Field>& fields);
  QWidget* makeEditor(const Field& field);
  QWidget* makeTypeButton(const Field& field);
  void fill(Row& row, const Field& field);
  void send(const std::string& key, const QString& typed);
  void say(Row& row, const QString& problem);
  void showFindings();
  Row* rowOf(const std::string& key);

  Workbench& bench_;
  ThemeName theme_ = ThemeName::Light;
  QWidget* sheet_;
  QGridLayout* grid_;
  QVBoxLayout* findings_;
  SlotRows slotRows_;
  std::vector<Row> rows_;
  std::vector<PieceRef> pieces_;
  std::vector<Finding> shownFindings_;
  bool filling_ = false; // values are put in by us, not typed
};

} // namespace sillwright
