// Values that are lists of fixed length in a job file: [x, y], [d, z], [s, d, z], [from, to], and both ends of a bar.
#pragma once

#include <memory>
#include <optional>
#include <tuple>
#include <type_traits>
#include <vector>

#include "core/base/shared.h"
#include "core/geometry/shapes.h"
#include "core/model/wall.h"
#include "core/store/fields.h"

namespace sillwright {

inline auto parts(Of<Point2> auto& point) { return std::tie(point.x, point.y); }
inline auto parts(Of<ProfilePoint> auto& point) { return std::tie(point.d, point.z); }
inline auto parts(Of<Point3> auto& point) { return std::tie(point.s, point.d, point.z); }
inline auto parts(Of<Interval> auto& interval) { return std::tie(interval.from, interval.to); }
inline auto parts(Of<BarPlace> auto& place) { return std::tie(place.a, place.b); }

template <class T>
concept InParts = requires(T& value) { parts(value); };

// What holds other values; everything else that is a class has a field list.
template <class T> inline constexpr bool isHolder = false;
template <class T> inline constexpr bool isHolder<std::vector<T>> = true;
template <class T> inline constexpr bool isHolder<std::optional<T>> = true;
template <class T> inline constexpr bool isHolder<Shared<T>> = true;
template <class T> inline constexpr bool isHolder<std::shared_ptr<T>> = true;

template <class T>
concept Entity = std::is_class_v<T> && !InParts<T> && !isHolder<T>;

} // namespace sillwright
