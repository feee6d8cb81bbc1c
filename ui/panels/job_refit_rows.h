// What a refit of the whole job says, wall by wall: how much would move, or that there is no layout.
#pragma once

#include "ui/panels/refit_rows.h"

namespace sillwright {

class JobRefitRowsModel : public RefitRowsModel {
  Q_OBJECT

public:
  using RefitRowsModel::RefitRowsModel;

protected:
  std::vector<RefitLine> linesNow() const override;
  void tick(std::size_t at, bool ticked) override;
};

} // namespace sillwright
