#include "ui/window/look_sheet.h"

#include <QColor>
#include <QHash>

#include "ui/paint/painter.h"

namespace sillwright {

namespace {

// $name stands for the colour of an ink.
constexpr const char* sheet = R"(
QMenuBar { background: $chrome; color: $text; padding: 3px 6px; spacing: 4px; }
QMenuBar::item { background: transparent; padding: 4px 8px; }
QMenuBar::item:selected { background: $select; color: $text; }
QMenu { background: $panel; color: $text; border: 1px solid $edge; padding: 4px 0; }
QMenu::item { padding: 5px 28px 5px 26px; }
QMenu::item:selected { background: $select; color: $text; }
QMenu::item:disabled { color: $edge; }
QMenu::separator { height: 1px; background: $rule2; margin: 4px 0; }
QMenu::indicator { width: 12px; height: 12px; margin-left: 8px; }
QToolBar { background: $chrome; border: none; border-bottom: 1px solid $rule; border-top: 1px solid $rule2;
           padding: 5px 6px; spacing: 2px; }
QToolBar::separator { background: $rule; width: 1px; margin: 4px 7px; }
QToolButton { color: $text; background: transparent; border: 1px solid transparent; border-radius: 3px;
              padding: 4px 6px; }
QToolButton:hover:enabled { background: $panel; border-color: $edge; }
QToolButton:pressed, QToolButton:checked { background: $handsoft; border-color: $hand; }
QToolButton:focus { border-color: $hand; }
QToolButton:disabled { color: $edge; }
QLineEdit { background: $field; color: $text; border: 1px solid $edge; border-radius: 2px;
                       padding: 0 6px; selection-background-color: $hand; selection-color: $handon; }
QLineEdit:focus { border: 2px solid $hand; padding: 0 5px; }
QLineEdit[wrong="true"] { border: 2px solid $fix; padding: 0 5px; }
QLabel { color: $text; background: transparent; }
QLabel[second="true"] { color: $text2; }
QLabel[wrong="true"] { color: $fix; }
QComboBox QAbstractItemView { background: $field; color: $text; selection-background-color: $select;
                              selection-color: $text; border: 1px solid $edge; }
QAbstractScrollArea { background: $panel; border: none; }
QAbstractScrollArea > QWidget > QWidget { background: $panel; }
QPlainTextEdit { background: $field; color: $text; border: 1px solid $edge; border-radius: 2px; padding: 0 2px;
                 selection-background-color: $hand; selection-color: $handon; }
QPlainTextEdit:focus { border: 2px solid $hand; padding: 0 1px; }
QPlainTextEdit[wrong="true"] { border: 2px solid $fix; padding: 0 1px; }
QTableWidget { gridline-color: $rule2; }
QTableWidget::item { padding: 0 5px; border: none; }
QTableWidget::item:selected { background: $select; color: $text; }
QHeaderView { background: $field; }
QHeaderView::section { background: $field; color: $text2; border: none; border-bottom: 1px solid $rule;
                       padding: 0 6px; }
QHeaderView::section:first { padding-left: 14px; }
QTableWidget QHeaderView::section:first { padding-left: 6px; }
QTableView#schedule QHeaderView::section { padding-right: 2px; }
QSplitter::handle { background: $rule; }
QTabWidget::pane { border: none; }
QTabBar { qproperty-drawBase: 0; }
QTabBar::tab { background: $chrome; color: $text2; padding: 5px 14px; border: none;
               border-bottom: 3px solid $chrome; }
QTabBar::tab:selected { color: $text; background: $panel; border-bottom: 3px solid $hand; }
QScrollBar { background: $panel; border: none; }
QScrollBar:vertical { width: 11px; }
QScrollBar:horizontal { height: 11px; }
QScrollBar::handle { background: $rule; border-radius: 4px; margin: 1px; min-height: 24px; min-width: 24px; }
QScrollBar::handle:hover { background: $edge; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QToolTip { background: $field; color: $text; border: 1px solid $edge; padding: 3px 6px; }
QDialog, QMessageBox { background: $panel; color: $text; }
)";

QString colourName(ThemeName theme, Ink ink) { return colourOf(theme, ink).name(); }

} // namespace

QPalette paletteOf(ThemeName theme) {
  QPalette palette;
  const auto set = [&](QPalette::ColorRole role, Ink ink) { palette.setColor(role, colourOf(theme, ink)); };
  set(QPalette::Window, Ink::Panel);
  set(QPalette::WindowText, Ink::Text);
  set(QPalette::Base, Ink::Field);
  set(QPalette::AlternateBase, Ink::Panel);
  set(QPalette::Text, Ink::Text);
  set(QPalette::PlaceholderText, Ink::Text2);
  set(QPalette::Button, Ink::Chrome);
  set(QPalette::ButtonText, Ink::Text);
  set(QPalette::Highlight, Ink::Hand);
  set(QPalette::HighlightedText, Ink::HandOn);
  set(QPalette::ToolTipBase, Ink::Field);
  set(QPalette::ToolTipText, Ink::Text);
  set(QPalette::Link, Ink::Hand);
  for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
    palette.setColor(QPalette::Disabled, role, colourOf(theme, Ink::Edge));
  return palette;
}

QString styleSheetOf(ThemeName theme) {
  // Longer names first, so that $text does not eat the beginning of $text2.
  static const std::pair<const char*, Ink> names[] = {
      {"$handsoft", Ink::HandSoft}, {"$handon", Ink::HandOn}, {"$select", Ink::Select}, {"$chrome", Ink::Chrome},
      {"$panel", Ink::Panel},       {"$field", Ink::Field},   {"$rule2", Ink::Rule2},   {"$text2", Ink::Text2},
      {"$hand", Ink::Hand},         {"$rule", Ink::Rule},     {"$edge", Ink::Edge},     {"$text", Ink::Text},
      {"$fix", Ink::Fix}};
  QString written = QString::fromLatin1(sheet);
  for (const auto& [name, ink] : names)
    written.replace(QLatin1String(name), colourName(theme, ink));
  return written;
}

ThemeName themeFor(ThemeChoice choice, const QPalette& desktop) {
  if (choice == ThemeChoice::System)
    return desktop.color(QPalette::Window).lightness() < 128 ? ThemeName::Dark : ThemeName::Light;
  return choice == ThemeChoice::Dark ? ThemeName::Dark : ThemeName::Light;
}

} // namespace sillwright
