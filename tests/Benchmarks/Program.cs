using Benchmarks;

return Figures.Print(args.Length == 0 ? ["all"] : args);
