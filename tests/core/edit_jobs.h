// Small jobs for the tests of edits and gestures. Everything is invented.
#pragma once

#include <algorithm>
#include <string>
#include <utility>

#include "core/edit/operations.h"

namespace sillwright::testing_jobs {

// A front of two 4'-0" piers beside a 16'-0" opening with a lowered pour line, as the first wall of a 24' x 28' outline.
struct Shed {
  Job job;
  Id wall;
  Id sill, opening, step, kingLeft, post, panel, strapLeft, strapRight, bolt, rod, upright, along, shot;
};

inline WallLine plainWall() {
  WallLine wall;
  wall.thickness = 8;
  wall.footing = {16, 8, 4};
  wall.formTop = 1.5;
  wall.sillInset = 0.5;
  wall.studs = StudLayout{};
  return wall;
}

template <class PieceOf> Id put(Job& job, Id wall, PieceOf piece) {
  auto [next, id] = addPiece(job, wall, std::move(piece));
  job = std::move(next);
  return id;
}

inline Strap strapAt(const Job& job, double station, Id column) {
  Strap strap;
  strap.type = job.types->straps.front().id;
  strap.station = station;
  strap.column = column;
  return strap;
}

inline Bolt boltAt(const Job& job, double station) {
  Bolt bolt;
  bolt.type = job.types->bolts.front().id;
  bolt.station = station;
  bolt.depth = 2.5;
  bolt.projection = 4;
  bolt.washer = job.types->washers.front().id;
  return bolt;
}

inline Column columnAt(double station, MakeUp makeUp, ColumnRole role) {
  Column column;
  column.station = station;
  column.makeUp = makeUp;
  column.role = role;
  return column;
}

inline Bar uprightAt(double station) {
  Bar bar;
  bar.planned = {{station, 4, -21}, {station, 4, -2}};
  return bar;
}

inline Shed shed() {
  Shed s;
  const Point2 corners[] = {{0, 0}, {288, 0}, {288, 336}, {0, 336}};
  s.job = addOutline(newJob(), corners, plainWall()).value();
  s.wall = s.job.walls[0].id;
  Job& job = s.job;
  Sill sill;
  sill.from = 0;
  sill.to = 288;
  sill.nominal = {3, 6};
  s.sill = put(job, s.wall, sill);
  Opening opening;
  opening.kind = OpeningKind::GarageDoor;
  opening.from = 48;
  opening.to = 240;
  opening.headHeight = 83.75;
  s.opening = put(job, s.wall, opening);
  PourStep step;
  step.from = 48;
  step.to = 240;
  step.height = -8;
  s.step = put(job, s.wall, step);
  s.post = put(job, s.wall, columnAt(2.75, {1, {6, 6}}, ColumnRole::Post));
  s.kingLeft = put(job, s.wall, columnAt(45, {2, {2, 6}}, ColumnRole::King));
  Panel panel;
  panel.from = 0;
  panel.to = 48;
  panel.leftMark = panel.rightMark = "HD1";
  s.panel = put(job, s.wall, panel);
  s.strapLeft = put(job, s.wall, strapAt(job, 2.75, s.post));
  s.strapRight = put(job, s.wall, strapAt(job, 45, s.kingLeft));
  s.bolt = put(job, s.wall, boltAt(job, 20));
  Rod rod;
  rod.type = job.types->rods.front().id;
  rod.column = s.post;
  rod.side = Side::Right;
  rod.offset = 1.25;
  rod.depth = 3.25;
  rod.projection = 6;
  s.rod = put(job, s.wall, rod);
  s.upright = put(job, s.wall, uprightAt(8));
  Bar along;
  along.run = BarRun::Along;
  along.planned = {{2, 4.5, -4}, {46, 4.5, -4}};
  s.along = put(job, s.wall, along);
  GradeShot shot;
  shot.station = 12;
  s.shot = put(job, s.wall, shot);
  return s;
}

inline bool equalButForCounter(Job a, const Job& b) {
  a.nextId = b.nextId;
  return a == b;
}

template <class PieceOf> PieceOf pieceOf(const Job& job, Id wall, Id piece) {
  return std::get<PieceOf>(*findPiece(job, PieceRef{wall, piece}));
}

} // namespace sillwright::testing_jobs
