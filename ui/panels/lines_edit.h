// An editor for what is said line after line: grows with its lines, Tab leaves it, Enter begins a line, Ctrl+Enter enters
// it all.
#pragma once

#include <QPlainTextEdit>

namespace sillwright {

class LinesEdit : public QPlainTextEdit {
  Q_OBJECT

public:
  explicit LinesEdit(QWidget* parent = nullptr);

  // Not as typed: nothing is told, and nothing counts as changed.
  void putText(const QString& words);
  bool isModified() const { return document()->isModified(); }
  void setModified(bool modified) { document()->setModified(modified); }

Q_SIGNALS:
  void edited();
  void finished(); // Ctrl+Enter, or the keyboard goes elsewhere

protected:
  bool event(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

private:
  void fitLines();

  bool putting_ = false;
};

} // namespace sillwright
