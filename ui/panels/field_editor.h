// Editors of fields, for every form that shows them: what the card and the form of a hardware type have alike.
#pragma once

#include <QString>
#include <QWidget>

#include <functional>

#include "core/edit/fields.h"

class QEvent;

namespace sillwright {

// For a field that is chosen or ticked; null for one that is typed. `send` hears what was chosen, or "yes" or "no".
QWidget* makePickedEditor(const Field& field, const std::function<void(const QString&)>& send);
// Its name and note, for the keyboard, for tests and for assistive technology.
void nameEditor(QWidget& editor, const Field& field);
// Whether the key is undo or redo: a field that was not typed in leaves these to the job.
bool asksForUndo(const QEvent& event);

} // namespace sillwright
