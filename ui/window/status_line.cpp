#include "ui/window/status_line.h"

#include <QPainter>
#include <QStringList>

#include <cmath>

#include "core/base/length.h"
#include "ui/paint/painter.h"
#include "ui/panels/look.h"

namespace sillwright {

namespace {

constexpr std::size_t mostNamed = 5;

QString text(const std::string& words) { return QString::fromStdString(words); }

} // namespace

StatusLine::StatusLine(const Workbench& bench, QWidget* parent) : QWidget(parent), bench_(bench) {
  setFixedHeight(28);
  setAccessibleName(tr("Status"));
}

void StatusLine::follow() {
  told_.clear();
  setAccessibleDescription(words());
  update();
}

void StatusLine::setPointer(const QString& words) {
  pointer_ = words;
  update();
}

void StatusLine::tell(const QString& words) {
  told_ = words;
  setAccessibleDescription(words);
  update();
}

void StatusLine::setTheme(ThemeName theme) {
  theme_ = theme;
  update();
}

std::vector<StatusLine::Part> StatusLine::inHandParts(const InHand& hand) const {
  const Job& job = bench_.job();
  std::vector<Part> parts;
  if (hand.kind == InHand::Kind::RubberBand)
    return {{tr("selecting what lies in the box"), Ink::Hand, Weight::Bold}, {tr("Esc: let go")}};
  if (hand.kind == InHand::Kind::Corner || hand.kind == InHand::Kind::Wall)
    return planParts(hand);
  const QString mark = text(markOf(job, hand.piece));
  const auto piece = findPiece(job, hand.piece);
  parts.push_back({piece ? tr("in hand: %1, %2").arg(mark, text(std::string(tradeName(kindOf(*piece)))))
                         : tr("in hand: %1").arg(mark),
                   Ink::Hand, Weight::Bold});
  parts.push_back({tr("%1 along").arg(text(printLength(hand.station, job.units))), Ink::Text});
  if (hand.before && std::abs(hand.moved) > 1e-9) {
    const QString by = text(printMeasure(std::abs(hand.moved), job.units));
    parts.push_back({hand.moved < 0 ? tr("moved %1 left").arg(by) : tr("moved %1 right").arg(by)});
  }
  if (hand.snap != SnapReason::None)
    parts.push_back({tr("on: %1").arg(text(std::string(sillwright::words(hand.snap)))), Ink::Hand});
  if (hand.landing)
    parts.push_back({tr("drops to %1").arg(text(printLength(*hand.landing, job.units))), Ink::Hand, Weight::Bold});
  if (!hand.problem.empty())
    parts.push_back({tr("%1: %2").arg(text(hand.typed), text(hand.problem)), Ink::Fix, Weight::Bold});
  else if (!hand.typed.empty())
    parts.push_back({tr("set to %1, Enter").arg(text(hand.typed)), Ink::Hand, Weight::Bold});
  parts.push_back({tr("type a length to set it · Alt: no snapping · Esc: put it back")});
  return parts;
}

// A corner or a whole wall of the plan.
std::vector<StatusLine::Part> StatusLine::planParts(const InHand& hand) const {
  const Job& job = bench_.job();
  std::vector<Part> parts;
  const bool corner = hand.kind == InHand::Kind::Corner;
  const QString mark = text(markOf(job, {hand.piece.wall, {}}));
  parts.push_back({corner ? tr("in hand: corner of wall %1").arg(mark) : tr("in hand: wall %1").arg(mark), Ink::Hand,
                   Weight::Bold});
  const WallLine* wall = job.walls.find(hand.lengthOf);
  if (wall)
    parts.push_back(
        {tr("wall %1: %2").arg(text(wall->mark), text(printLength(wallLength(job, *wall), job.units))), Ink::Text});
  if (!corner && std::abs(hand.moved) > 1e-9) {
    const QString by = text(printLength(std::abs(hand.moved), job.units));
    parts.push_back({hand.moved < 0 ? tr("moved %1 in").arg(by) : tr("moved %1 out").arg(by), Ink::Text});
  }
  if (hand.snap != SnapReason::None)
    parts.push_back({tr("on: %1").arg(text(std::string(sillwright::words(hand.snap)))), Ink::Hand});
  if (!hand.problem.empty())
    parts.push_back({text(hand.problem), Ink::Fix, Weight::Bold});
  else if (!hand.typed.empty())
    parts.push_back({tr("set to %1, Enter").arg(text(hand.typed)), Ink::Hand, Weight::Bold});
  parts.push_back({corner ? tr("type the length of that wall · Alt: no snapping · Esc: put it back")
                          : tr("type how far · Alt: no snapping · Esc: put it back")});
  return parts;
}

// What is drawn, what would happen, and the keys that count just now.
std::vector<StatusLine::Part> StatusLine::penParts(const WallPen& pen) const {
  const ShownPen shown = shownOf(pen);
  std::vector<Part> parts;
  const auto said = [&](const QString& words, Ink ink = Ink::Text2, Weight weight = Weight::Regular) {
    parts.push_back({words, ink, weight});
  };
  const std::size_t corners = pen.corners.size();
  said(corners == 0 ? tr("drawing walls: click the first corner")
                    : tr("drawing walls: click the next corner, or type its length"),
       Ink::Hand, Weight::Bold);
  if (!shown.problem.empty())
    said(text(shown.problem), Ink::Fix, Weight::Bold);
  else if (!shown.typed.empty())
    said(tr("set to %1, Enter").arg(text(shown.typed)), Ink::Hand, Weight::Bold);
  else if (!shown.words.empty())
    said(pen.closes || pen.ends ? text(shown.words) : tr("on: %1").arg(text(shown.words)), Ink::Hand);
  if (corners >= 3)
    said(tr("Enter: close · O: leave it open"));
  else if (corners == 2)
    said(tr("Enter: one wall and no more"));
  if (corners > 0)
    said(tr("Backspace: a corner back"));
  said(tr("arrows: direction · Alt: free · Esc: give up"));
  return parts;
}

std::vector<StatusLine::Part> StatusLine::parts() const {
  if (bench_.pen() && !bench_.inHand())
    return penParts(*bench_.pen());
  if (bench_.inHand())
    return inHandParts(*bench_.inHand());
  std::vector<Part> parts;
  if (!told_.isEmpty())
    return {{told_, Ink::Text, Weight::Bold}};
  if (!pointer_.isEmpty())
    parts.push_back({pointer_, Ink::Text});
  const Selection& selection = bench_.session().selection();
  if (selection.empty()) {
    parts.push_back({tr("click a piece to select it, Tab goes from piece to piece")});
    return parts;
  }
  QStringList marks;
  for (std::size_t i = 0; i < selection.size() && i < mostNamed; ++i)
    marks << text(markOf(bench_.job(), selection[i]));
  if (selection.size() > mostNamed)
    marks << tr("and %1 more").arg(selection.size() - mostNamed);
  parts.push_back({tr("selected: %1").arg(marks.join(QStringLiteral(", ")))});
  if (!bench_.typed().empty())
    parts.push_back({tr("set to %1, Enter").arg(text(bench_.typed())), Ink::Hand, Weight::Bold});
  if (selection.size() == 1 && !selection.front().piece) {
    parts.push_back({tr("on the plan: drag a corner, or the diamond to move the whole wall")});
    return parts;
  }
  parts.push_back({tr("arrows: 1/16\", Shift 1/8\", Ctrl 1\"")});
  parts.push_back({tr("type a length to set it")});
  return parts;
}

QString StatusLine::rightWords() const {
  return bench_.job().units == LengthStyle::FeetInches ? tr("feet, inches, sixteenths · checked as you move")
                                                       : tr("millimetres · checked as you move");
}

QString StatusLine::words() const {
  QStringList all;
  for (const Part& part : parts())
    all << part.words;
  return all.join(QStringLiteral("   "));
}

void StatusLine::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), colourOf(theme_, Ink::Chrome));
  painter.fillRect(0, 0, width(), 1, colourOf(theme_, Ink::Rule));
  double x = 14;
  for (const Part& part : parts())
    x = paintWords(painter, theme_, {x, 19}, part.words, 12, part.ink, part.weight) + 30;
  const QString right = rightWords();
  if (x + wordsWidth(right, 12) < width() - 14)
    paintWords(painter, theme_, {width() - 14.0, 19}, right, 12, Ink::Text2, Weight::Regular, Anchor::End);
}

} // namespace sillwright
