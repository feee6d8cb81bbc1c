#include "core/model/job.h"

#include <algorithm>

namespace sillwright {

bool Revision::operator==(const Revision& other) const {
  return number == other.number && date == other.date && reason == other.reason && by == other.by &&
         extra == other.extra && (job == other.job || *job == *other.job);
}

WallList::WallList(std::vector<WallLine> walls) {
  std::vector<Pointer> pointers;
  pointers.reserve(walls.size());
  for (WallLine& wall : walls)
    pointers.push_back(std::make_shared<const WallLine>(std::move(wall)));
  rebuild(std::move(pointers));
}

std::optional<std::size_t> WallList::indexOf(Id wall) const {
  const auto found = index_->at.find(wall);
  if (found == index_->at.end())
    return std::nullopt;
  return found->second;
}

const WallLine* WallList::find(Id wall) const {
  const auto index = indexOf(wall);
  return index ? pointer(*index).get() : nullptr;
}

WallList::Pointer WallList::findPointer(Id wall) const {
  const auto index = indexOf(wall);
  return index ? pointer(*index) : nullptr;
}

std::vector<Id> WallList::atCorner(Id corner) const {
  const auto found = index_->corners.find(corner);
  return found == index_->corners.end() ? std::vector<Id>{} : found->second;
}

void WallList::replace(WallLine wall) {
  const std::size_t i = *indexOf(wall.id);
  const WallLine& old = *pointer(i);
  const bool sameCorners = old.startCorner == wall.startCorner && old.endCorner == wall.endCorner;
  Block block = *blocks_[i / blockSize];
  block[i % blockSize] = std::make_shared<const WallLine>(std::move(wall));
  blocks_[i / blockSize] = std::make_shared<const Block>(std::move(block));
  if (!sameCorners)
    rebuild(all());
}

void WallList::add(WallLine wall) {
  auto walls = all();
  walls.push_back(std::make_shared<const WallLine>(std::move(wall)));
  rebuild(std::move(walls));
}

void WallList::remove(Id wall) {
  auto walls = all();
  std::erase_if(walls, [wall](const Pointer& p) { return p->id == wall; });
  rebuild(std::move(walls));
}

void WallList::difference(const WallList& other, const std::function<void(Id)>& changed) const {
  const bool sameOrder = index_ == other.index_;
  if (sameOrder) {
    for (std::size_t b = 0; b < blocks_.size(); ++b) {
      if (blocks_[b] == other.blocks_[b])
        continue;
      for (std::size_t i = 0; i < blocks_[b]->size(); ++i)
        if ((*blocks_[b])[i] != (*other.blocks_[b])[i])
          changed((*blocks_[b])[i]->id);
    }
    return;
  }
  for (std::size_t i = 0; i < size_; ++i)
    if (other.findPointer((*this)[i].id) != pointer(i))
      changed((*this)[i].id);
  for (std::size_t i = 0; i < other.size_; ++i)
    if (!indexOf(other[i].id))
      changed(other[i].id);
}

bool WallList::operator==(const WallList& other) const {
  if (size_ != other.size_)
    return false;
  for (std::size_t i = 0; i < size_; ++i)
    if (pointer(i) != other.pointer(i) && (*this)[i] != other[i])
      return false;
  return true;
}

std::vector<WallList::Pointer> WallList::all() const {
  std::vector<Pointer> walls;
  walls.reserve(size_ + 1);
  for (const auto& block : blocks_)
    walls.insert(walls.end(), block->begin(), block->end());
  return walls;
}

void WallList::rebuild(std::vector<Pointer> walls) {
  auto index = std::make_shared<Index>();
  blocks_.clear();
  size_ = walls.size();
  for (std::size_t i = 0; i < walls.size(); ++i) {
    index->at[walls[i]->id] = i;
    index->corners[walls[i]->startCorner].push_back(walls[i]->id);
    if (walls[i]->endCorner != walls[i]->startCorner)
      index->corners[walls[i]->endCorner].push_back(walls[i]->id);
  }
  for (std::size_t i = 0; i < walls.size(); i += blockSize) {
    const auto end = walls.begin() + static_cast<std::ptrdiff_t>(std::min(i + blockSize, walls.size()));
    blocks_.push_back(std::make_shared<const Block>(walls.begin() + static_cast<std::ptrdiff_t>(i), end));
  }
  index_ = std::move(index);
}

} // namespace sillwright
