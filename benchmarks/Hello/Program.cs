// The least that a program can do: beside it, what the console takes to start.
Console.WriteLine("Hello");
