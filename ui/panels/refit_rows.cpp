#include "ui/panels/refit_rows.h"

#include <QPainter>

#include "core/refit/refit_words.h"
#include "ui/paint/painter.h"
#include "ui/panels/look.h"
#include "ui/panels/panel_frame.h"

namespace sillwright {

namespace {

constexpr int wordsAt = 44, rightMargin = 12, titleHeight = 26;
constexpr double wordsSize = 13, secondSize = 12, wordsLine = 18, secondLine = 16;

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

QString stationWords(const Workbench& bench, const std::optional<Stand>& stand) {
  return stand ? text(printLength(stand->station, bench.job().units)) : QString();
}

std::string typeName(const HardwareTypes& types, const Piece& piece) {
  if (const Strap* strap = std::get_if<Strap>(&piece))
    if (const StrapType* type = findStrapType(types, strap->type))
      return type->name;
  if (const Bolt* bolt = std::get_if<Bolt>(&piece))
    if (const BoltType* type = findBoltType(types, bolt->type))
      return type->name;
  return {};
}

// Where it comes from and where it goes; of one that is added, of which type it is.
QString whereWords(const Workbench& bench, const Change& change, bool ticked) {
  const WallLine& wall = *bench.refitDesk().wall()->layout.wall;
  const QString from = stationWords(bench, standBefore(wall, change)),
                to = stationWords(bench, standAfter(wall, change));
  if (!change.before)
    return ticked ? text(typeName(*bench.job().types, *change.after)) : RefitRowsModel::tr("left out");
  if (!ticked)
    return RefitRowsModel::tr("refused: it stays at %1").arg(from);
  if (!change.after)
    return RefitRowsModel::tr("now at %1").arg(from);
  return from == to ? RefitRowsModel::tr("at %1").arg(to) : RefitRowsModel::tr("from %1 to %2").arg(from, to);
}

RefitLine titled(const QString& words) {
  RefitLine line;
  line.words = words;
  return line;
}

RefitLine changeLine(const Workbench& bench, std::size_t at) {
  const RefitDesk& desk = bench.refitDesk();
  const RefitRow& row = desk.rows()[at];
  const WallLine& wall = *desk.wall()->layout.wall;
  RefitLine line;
  line.kind = RefitLine::Kind::Change;
  line.at = at;
  line.ticked = row.ticked;
  line.faint = !row.ticked;
  line.words = text(changeWords(wall, row.change, bench.job().units));
  line.second = whereWords(bench, row.change, row.ticked);
  if (const Id piece = pieceOf(row.change))
    line.pieces = {{wall.id, piece}};
  return line;
}

RefitLine requirementLine(const Workbench& bench, const NoLayout& conflict, std::size_t at) {
  const RefitDesk& desk = bench.refitDesk();
  const Requirement& requirement = conflict.requirements[at];
  const WallLayout& layout = desk.wall()->layout;
  RefitLine line;
  line.kind = RefitLine::Kind::Requirement;
  line.at = at;
  line.number = static_cast<int>(at) + 1;
  line.words = text(requirementWords(layout, desk.limits(), requirement, bench.job().units));
  line.second = text(relaxationWords(layout, requirement, bench.job().units));
  for (const Id piece : requirement.pieces)
    if (piece)
      line.pieces.push_back({layout.wall->id, piece});
  return line;
}

QString conflictTitle(const NoLayout& conflict, bool first) {
  if (conflict.requirements.size() == 1)
    return first ? RefitRowsModel::tr("cannot be met") : RefitRowsModel::tr("nor can this be met");
  return first ? RefitRowsModel::tr("cannot hold together") : RefitRowsModel::tr("nor can these hold together");
}

std::vector<RefitLine> linesOf(const Workbench& bench) {
  const RefitDesk& desk = bench.refitDesk();
  std::vector<RefitLine> lines;
  if (desk.state() == RefitDesk::State::Closed)
    return lines;
  for (const NoLayout& conflict : desk.conflicts()) {
    lines.push_back(titled(conflictTitle(conflict, lines.empty())));
    for (std::size_t i = 0; i < conflict.requirements.size(); ++i)
      lines.push_back(requirementLine(bench, conflict, i));
  }
  const bool some = std::any_of(desk.rows().begin(), desk.rows().end(), [](const RefitRow& row) { return row.ticked; });
  if (!desk.proposal() && !desk.rows().empty())
    lines.push_back(titled(some ? RefitRowsModel::tr("elsewhere on this wall") : RefitRowsModel::tr("refused")));
  for (std::size_t i = 0; i < desk.rows().size(); ++i)
    lines.push_back(changeLine(bench, i));
  return lines;
}

struct Broken {
  QStringList words, second;
  int height() const {
    return static_cast<int>(12 + wordsLine * static_cast<double>(words.size()) +
                            secondLine * static_cast<double>(second.size()));
  }
};

Broken brokenTo(const RefitLine& line, int width) {
  const double room = width - wordsAt - rightMargin;
  return {brokenToFit(line.words, wordsSize, room), brokenToFit(line.second, secondSize, room)};
}

void paintTick(QPainter& painter, ThemeName theme, const QRect& box, bool ticked) {
  Drawing tick;
  const double x = box.x() + 0.5, y = box.y() + 0.5, side = box.width() - 1;
  tick.fillRect(x, y, x + side, y + side, ticked ? Ink::Hand : Ink::Field);
  tick.rect(x, y, x + side, y + side, ticked ? Ink::Hand : Ink::Edge, 1.2);
  if (ticked) {
    const Point2 stroke[] = {
        {x + side * 0.2, y + side * 0.52}, {x + side * 0.42, y + side * 0.74}, {x + side * 0.8, y + side * 0.26}};
    tick.polyline(stroke, Ink::HandOn, 2.2);
  }
  paintPixels(painter, tick, theme);
}

} // namespace

// ---- model ------------------------------------------------------------------------------------------------------

RefitRowsModel::RefitRowsModel(Workbench& bench, QObject* parent) : QAbstractListModel(parent), bench_(bench) {}

std::vector<RefitLine> RefitRowsModel::linesNow() const {
  return linesOf(bench_);
}

void RefitRowsModel::tick(std::size_t at, bool ticked) {
  bench_.refitDesk().tick(at, ticked);
}

// The same rows with other ticks or words keep their places, so that the keyboard stays where it is.
void RefitRowsModel::follow() {
  std::vector<RefitLine> lines = linesNow();
  if (lines == lines_)
    return;
  if (lines.size() == lines_.size() && !lines.empty()) {
    lines_ = std::move(lines);
    Q_EMIT dataChanged(index(0), index(rowCount() - 1));
    return;
  }
  beginResetModel();
  lines_ = std::move(lines);
  endResetModel();
}

const RefitLine* RefitRowsModel::line(int row) const {
  return row >= 0 && row < rowCount() ? &lines_[static_cast<std::size_t>(row)] : nullptr;
}

int RefitRowsModel::rowOfChange(std::size_t at) const {
  for (std::size_t i = 0; i < lines_.size(); ++i)
    if (lines_[i].kind == RefitLine::Kind::Change && lines_[i].at == at)
      return static_cast<int>(i);
  return -1;
}

int RefitRowsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(lines_.size());
}

Qt::ItemFlags RefitRowsModel::flags(const QModelIndex& index) const {
  const RefitLine* shown = line(index.row());
  if (!shown || shown->kind == RefitLine::Kind::Title)
    return Qt::NoItemFlags; // the keyboard passes it by
  const Qt::ItemFlags plain = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
  return shown->hasTick() ? plain | Qt::ItemIsUserCheckable : plain;
}

QVariant RefitRowsModel::data(const QModelIndex& index, int role) const {
  const RefitLine* shown = line(index.row());
  if (!shown)
    return {};
  if (role == Qt::DisplayRole)
    return shown->kind == RefitLine::Kind::Requirement ? tr("%1. %2").arg(shown->number).arg(shown->words)
                                                       : shown->words;
  if (role == Qt::AccessibleTextRole) {
    const QString words = data(index, Qt::DisplayRole).toString();
    return shown->second.isEmpty() ? words : tr("%1, %2").arg(words, shown->second);
  }
  if (role == Qt::CheckStateRole && shown->hasTick())
    return shown->ticked ? Qt::Checked : Qt::Unchecked;
  return {};
}

bool RefitRowsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  const RefitLine* shown = line(index.row());
  if (role != Qt::CheckStateRole || !shown || !shown->hasTick())
    return false;
  tick(shown->at, value.toInt() == Qt::Checked);
  return true;
}

// ---- a row ------------------------------------------------------------------------------------------------------

QRect RefitRowsDelegate::tickBox(const QRect& row) {
  return {row.x() + 16, row.y() + 9, 16, 16};
}

QRectF RefitRowsDelegate::onlyButton(const QRect& row) {
  const double width = buttonWidth(RefitRowsModel::tr("accept this"), 12);
  return {row.right() + 1 - 12 - width, row.bottom() - 27.0, width, 22};
}

QSize RefitRowsDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const {
  const auto* model = qobject_cast<const RefitRowsModel*>(index.model());
  const RefitLine* line = model ? model->line(index.row()) : nullptr;
  if (!line || line->kind == RefitLine::Kind::Title)
    return {width_, titleHeight};
  return {width_, brokenTo(*line, width_).height()};
}

void RefitRowsDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const auto* model = qobject_cast<const RefitRowsModel*>(index.model());
  const RefitLine* line = model ? model->line(index.row()) : nullptr;
  if (!line)
    return;
  const QRect box = option.rect;
  if (line->kind == RefitLine::Kind::Title)
    return paintRowHead(*painter, theme_, box, line->words);
  const bool selected = option.state.testFlag(QStyle::State_Selected);
  const bool change = line->kind == RefitLine::Kind::Change;
  paintRowGround(*painter, theme_, box, selected);
  if (line->hasTick())
    paintTick(*painter, theme_, tickBox(box), line->ticked);
  else if (line->kind == RefitLine::Kind::Requirement)
    paintWords(*painter, theme_, {box.x() + 24.0, box.y() + 22.0}, QString::number(line->number), wordsSize, Ink::Text,
               Weight::Bold, Anchor::Middle);
  const Broken lines = brokenTo(*line, width_);
  const Ink ink = line->faint ? Ink::Text2 : Ink::Text;
  double y = box.y() + 22;
  for (const QString& words : lines.words) {
    paintWords(*painter, theme_, {box.x() + double(wordsAt), y}, words, wordsSize, ink,
               line->faint || line->kind == RefitLine::Kind::Requirement ? Weight::Regular : Weight::Bold);
    y += wordsLine;
  }
  y -= 1;
  for (const QString& words : lines.second) {
    paintWords(*painter, theme_, {box.x() + double(wordsAt), y}, words, secondSize, Ink::Text2);
    y += secondLine;
  }
  if (selected && change && line->ticked && model->rowCount() > 1) {
    ButtonLook look;
    look.box = onlyButton(box);
    look.words = RefitRowsModel::tr("accept this");
    look.size = 12;
    paintButton(*painter, theme_, look);
  }
}

} // namespace sillwright
