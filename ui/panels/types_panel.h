// Hardware and marks: the types of the job and the plan's wall-end schedule, entered and changed. A list by kind; the
// form of the one chosen; beside a type its picture, over a mark the whole schedule.
#pragma once

#include <QWidget>

#include "core/gesture/workbench.h"
#include "ui/panels/type_list.h"

class QBoxLayout;
class QLabel;
class QTableWidget;
class QTableWidgetItem;

namespace sillwright {

class TypeForm;
class TypePicture;
class WordButton;

class TypesPanel : public QWidget {
  Q_OBJECT

public:
  explicit TypesPanel(Workbench& bench, QWidget* parent = nullptr);

  // What it shows follows the job while it is visible; a preview in mid-gesture is left out.
  void follow();
  void setTheme(ThemeName theme);
  QString note() const; // "9 types, 2 marks"
  void choose(Id id);
  void focusList();

  TypeList& list() const { return *list_; }
  TypeForm& form() const { return *form_; }
  QTableWidget& marks() const { return *marks_; }
  QString problem() const; // why nothing was removed

Q_SIGNALS:
  void leaveWanted(); // Esc

protected:
  void showEvent(QShowEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

private:
  QWidget* makeLeft();
  QWidget* makeRight();
  void showChosen();
  void showMarks();
  void shareRoom();
  void add(bool copy);
  void remove();
  void enterMark(QTableWidgetItem* cell);
  void say(const QString& problem);

  Workbench& bench_;
  TypeList* list_;
  TypeForm* form_;
  TypePicture* picture_;
  QTableWidget* marks_;
  QLabel* problem_;
  WordButton* copy_;
  WordButton* plain_;
  WordButton* remove_;
  QBoxLayout* right_ = nullptr;
  bool filling_ = false; // the table is filled by us, not typed in
};

} // namespace sillwright
