// The form of one hardware type or mark: every field with its note; what is wrong with what is typed stands under it
// while it is typed, and is not taken.
#pragma once

#include <QLabel>
#include <QScrollArea>

#include <vector>

#include "core/edit/types.h"
#include "core/gesture/workbench.h"

class QGridLayout;

namespace sillwright {

class TypeForm : public QScrollArea {
  Q_OBJECT

public:
  explicit TypeForm(Workbench& bench, QWidget* parent = nullptr);

  // The form of that type; empty: none. Values that were refused stay as typed until the field itself changes.
  void show(Id id);
  Id shown() const { return id_; }
  // As if typed into the field and entered: a table beside the form writes through it.
  void enter(const std::string& key, const QString& typed);
  // Puts back what stands in the job into the field with the keyboard; false where nothing was typed there.
  bool giveUp();
  void focusFirst();
  QWidget* editorOf(const std::string& key) const;
  QString errorAt(const std::string& key) const;

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  struct Row {
    Field field;
    QWidget* editor = nullptr;
    QLabel* error = nullptr;
    bool refused = false;
  };
  void build(const std::vector<Field>& fields);
  void addRow(const Field& field);
  QWidget* makeEditor(const Field& field);
  void fill(Row& row);
  void look(const std::string& key, const QString& typed); // says what is wrong, changes nothing
  void send(const std::string& key, const QString& typed);
  void say(Row& row, const QString& problem);
  Row* rowOf(const std::string& key);

  Workbench& bench_;
  Id id_;
  QWidget* sheet_ = nullptr;
  QGridLayout* grid_ = nullptr;
  std::vector<Row> rows_;
  bool filling_ = false; // values are put in by us, not typed
};

} // namespace sillwright
